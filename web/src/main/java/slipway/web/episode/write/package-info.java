/** The papers of an episode: put together from the record, edited, signed, added to, compared, printed. */
@NullMarked
package slipway.web.episode.write;

import org.jspecify.annotations.NullMarked;
