/**
 * Means, paired differences and ratios with their intervals, from exact sums. Nothing here knows what is measured.
 */
@NullMarked
package slipway.study.statistics;

import org.jspecify.annotations.NullMarked;
