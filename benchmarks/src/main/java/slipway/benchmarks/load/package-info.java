/** Many people at once: what a server takes in the morning and evening of a network, and how fast check-ins are kept. */
@NullMarked
package slipway.benchmarks.load;

import org.jspecify.annotations.NullMarked;
