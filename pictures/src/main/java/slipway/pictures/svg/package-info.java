/** Writes SVG 1.1 with presentation attributes only: small, the same bytes for the same input, safe under a strict CSP. */
@NullMarked
package slipway.pictures.svg;

import org.jspecify.annotations.NullMarked;
