/** What all commands share: exit statuses, reading input files, writing whole files, saying what went wrong. */
@NullMarked
package slipway.app.console;

import org.jspecify.annotations.NullMarked;
