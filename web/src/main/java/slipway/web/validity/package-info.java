/** How far the numbers can be believed: the validation reports of the project, as pages. */
@NullMarked
package slipway.web.validity;

import org.jspecify.annotations.NullMarked;
