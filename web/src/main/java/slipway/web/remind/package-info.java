/**
 * Reminders by e-mail: who needs one today, what it says, and how it is handed to the mail server. A reminder says nothing
 * of health, and holds no name of a person; what a mail server answers goes into no log, since it repeats addresses.
 */
@NullMarked
package slipway.web.remind;

import org.jspecify.annotations.NullMarked;
