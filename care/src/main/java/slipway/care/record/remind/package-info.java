/** Reminders by e-mail: who said yes to them, what was sent on which day, and the way to stop them without signing in. */
@NullMarked
package slipway.care.record.remind;

import org.jspecify.annotations.NullMarked;
