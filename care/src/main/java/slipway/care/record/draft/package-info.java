/** What somebody has typed and not yet saved, so that a session that idles out loses nothing. */
@NullMarked
package slipway.care.record.draft;

import org.jspecify.annotations.NullMarked;
