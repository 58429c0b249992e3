/** Pictures, papers and what goes on from reports: the whole tasks of an invented person's files. */
@NullMarked
package slipway.benchmarks.papers;

import org.jspecify.annotations.NullMarked;
