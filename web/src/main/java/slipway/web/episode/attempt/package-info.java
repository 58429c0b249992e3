/** The supervised try of each exercise in the room, and the release of the sheet. */
@NullMarked
package slipway.web.episode.attempt;

import org.jspecify.annotations.NullMarked;
