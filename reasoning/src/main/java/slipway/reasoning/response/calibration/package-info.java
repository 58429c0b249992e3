/**
 * Whether predicted chances of a flare come true: weeks of a log with what was predicted at their beginning and whether a
 * flare was reported, put together over any number of people.
 */
@NullMarked
package slipway.reasoning.response.calibration;

import org.jspecify.annotations.NullMarked;
