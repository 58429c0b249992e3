package slipway.store.work;

import java.time.Instant;
import java.util.Optional;

/**
 * What is known of some work, for whoever looks after the servers. Times are those of the clock of the database.
 *
 * @param succeededAt when it last went well
 * @param endedAt when it last ended, well or not
 * @param failures in a row, up to now
 * @param words what came of it last, without names or findings
 */
public record WorkNote(
        String name, Optional<Instant> succeededAt, Optional<Instant> endedAt, int failures, String words) {}
