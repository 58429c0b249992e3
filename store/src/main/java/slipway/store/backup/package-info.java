/**
 * Backups and their return. A backup is the whole of the records as a SQLite file, whichever database they come from,
 * compressed and sealed with a key; it goes back into either database.
 */
@NullMarked
package slipway.store.backup;

import org.jspecify.annotations.NullMarked;
