/** Check-ins, alerts, measures and goals in the database. */
@NullMarked
package slipway.store.follow;

import org.jspecify.annotations.NullMarked;
