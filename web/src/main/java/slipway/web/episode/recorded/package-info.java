/** Steps that show what is recorded so far: check-ins, measures, papers. */
@NullMarked
package slipway.web.episode.recorded;

import org.jspecify.annotations.NullMarked;
