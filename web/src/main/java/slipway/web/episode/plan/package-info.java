/** The plan: what is proposed and why, the therapist's picks and refusals, the ceiling, earlier versions. */
@NullMarked
package slipway.web.episode.plan;

import org.jspecify.annotations.NullMarked;
