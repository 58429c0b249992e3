/** From findings to decisions: screening, locating, tolerance, dose. Pure functions on records. */
@NullMarked
package slipway.reasoning;

import org.jspecify.annotations.NullMarked;
