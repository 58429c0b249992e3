/** Documents, notes and letters in the database. */
@NullMarked
package slipway.store.papers;

import org.jspecify.annotations.NullMarked;
