/** Figures over all episodes of a clinic: worked out page by page, kept for the next look, and read again. */
@NullMarked
package slipway.care.caseload;

import org.jspecify.annotations.NullMarked;
