/** What is followed between visits: the released plan, the reports on it, and the answers of the rules. */
@NullMarked
package slipway.web.episode.home;

import org.jspecify.annotations.NullMarked;
