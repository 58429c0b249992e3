/** Speed, measured side by side in one run and reported as ratios; {@code benchmarks/run} is the one command. */
@NullMarked
package slipway.benchmarks;

import org.jspecify.annotations.NullMarked;
