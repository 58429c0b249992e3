/** Unsaved entries in the database. */
@NullMarked
package slipway.store.draft;

import org.jspecify.annotations.NullMarked;
