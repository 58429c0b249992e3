/** Keeps the diagnosis codes of clinics in the database. */
@NullMarked
package slipway.store.codes;

import org.jspecify.annotations.NullMarked;
