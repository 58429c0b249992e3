/** The database itself: its pools, its migrations, transactions and new ids. */
@NullMarked
package slipway.store.db;

import org.jspecify.annotations.NullMarked;
