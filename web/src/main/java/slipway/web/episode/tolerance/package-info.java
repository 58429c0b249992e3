/** How much load starts the symptoms: neural tests on both sides, ranges, irritability, and what they come to. */
@NullMarked
package slipway.web.episode.tolerance;

import org.jspecify.annotations.NullMarked;
