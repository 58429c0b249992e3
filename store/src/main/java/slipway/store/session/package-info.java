/** Web sessions of staff in the database, so that a restart or another server signs nobody out. */
@NullMarked
package slipway.store.session;

import org.jspecify.annotations.NullMarked;
