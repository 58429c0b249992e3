/** Reminders by e-mail in the database: consents with their trail, what came of each day, and the tokens that stop them. */
@NullMarked
package slipway.store.remind;

import org.jspecify.annotations.NullMarked;
