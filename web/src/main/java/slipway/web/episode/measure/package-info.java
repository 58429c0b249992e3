/** The step measure: scores, what their change is worth, goals, and where the course stands. */
@NullMarked
package slipway.web.episode.measure;

import org.jspecify.annotations.NullMarked;
