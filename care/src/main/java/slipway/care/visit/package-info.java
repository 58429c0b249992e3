/**
 * The visit as one function: from a case to a plan with its basis. Pages, commands and tests call the same; what comes
 * out on paper or as JSON is made from its result elsewhere.
 */
@NullMarked
package slipway.care.visit;

import org.jspecify.annotations.NullMarked;
