/** The step follow: reports from home with the answers of the rules, alerts, and the person's way in. */
@NullMarked
package slipway.web.episode.followup;

import org.jspecify.annotations.NullMarked;
