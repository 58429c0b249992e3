/** What a server does on a schedule while it runs: sweeping, backups, alerts that nobody took, the end of keeping. */
@NullMarked
package slipway.app.upkeep;

import org.jspecify.annotations.NullMarked;
