/** The episode and its use cases: the case file, the visit, the plan. */
@NullMarked
package slipway.care;

import org.jspecify.annotations.NullMarked;
