/** The clinic as a whole, for its lead: what changed, how long it took, whether groups differ by more than chance. */
@NullMarked
package slipway.web.caseload;

import org.jspecify.annotations.NullMarked;
