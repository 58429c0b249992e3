/** Speed, measured side by side in one run and reported as ratios; {@code ./bench} is the one command. */
@NullMarked
package slipway.benchmarks;

import org.jspecify.annotations.NullMarked;
