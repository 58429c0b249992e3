/** What comes between visits: check-ins and alerts, measures and goals. */
@NullMarked
package slipway.care.record.follow;

import org.jspecify.annotations.NullMarked;
