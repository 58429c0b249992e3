/** Where the trouble probably is: ranked sites with their basis, what would tell most next, and what the therapist decides. */
@NullMarked
package slipway.web.episode.locate;

import org.jspecify.annotations.NullMarked;
