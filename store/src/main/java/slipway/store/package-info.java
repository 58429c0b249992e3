/**
 * The clinic's records in a database: SQLite in one file, or PostgreSQL. {@link slipway.store.Store} opens it and gives
 * the ports of {@code slipway.care.record}. SQL lives here and nowhere else; what a finding means is not known here.
 */
@NullMarked
package slipway.store;

import org.jspecify.annotations.NullMarked;
