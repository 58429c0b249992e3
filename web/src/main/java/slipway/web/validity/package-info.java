/**
 * How far the numbers can be believed: the validation reports of the project, as pages, and what the records of this
 * clinic say about its rules and predicted chances.
 */
@NullMarked
package slipway.web.validity;

import org.jspecify.annotations.NullMarked;
