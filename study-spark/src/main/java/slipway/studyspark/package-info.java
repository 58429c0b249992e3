/**
 * The study on simulated people as a job of Apache Spark, for more people than one machine has the time for. The simulation
 * is that of {@code slipway.study}, and so are the results, to the last bit.
 */
@NullMarked
package slipway.studyspark;

import org.jspecify.annotations.NullMarked;
