/** What the person told: onset, pattern of the day, habits that press on the nerve, goals, what they can do at home. */
@NullMarked
package slipway.web.episode.history;

import org.jspecify.annotations.NullMarked;
