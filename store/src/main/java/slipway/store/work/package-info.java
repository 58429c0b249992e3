/**
 * Work on a schedule that several servers on one database share: each turn is done once, by whichever server comes first,
 * and by another if that one dies. What came of it stands in the database. What the work is, is not known here.
 */
@NullMarked
package slipway.store.work;

import org.jspecify.annotations.NullMarked;
