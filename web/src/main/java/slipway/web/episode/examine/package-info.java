/** The examination: findings of both sides by keyboard, the chart of symptoms, and what would tell most next. */
@NullMarked
package slipway.web.episode.examine;

import org.jspecify.annotations.NullMarked;
