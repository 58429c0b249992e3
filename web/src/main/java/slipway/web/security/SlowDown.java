package slipway.web.security;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * How long to wait after failed attempts: nothing for the first few, then twice as long each time. Nobody is locked out
 * for good by somebody else's guessing.
 *
 * <p>NIST SP 800-63B-4 (2025) asks for at most 100 failed attempts in a row. Half an hour each keeps a whole day of
 * guessing below that; the trail shows it to the lead meanwhile.
 */
final class SlowDown {
    private static final int FREE = 3;
    private static final int LONGEST_SECONDS = 1800;

    private SlowDown() {}

    /** When the next attempt is taken after so many failures in a row, the one of now included. */
    static Instant nextAllowed(int failures, Instant now) {
        return now.plus(pause(failures));
    }

    /** Until when to wait; a time further away than any pause was set by a clock that was wrong, and binds nobody. */
    static Optional<Instant> waiting(Optional<Instant> nextAllowedAt, Instant now) {
        return nextAllowedAt.filter(until -> now.isBefore(until) && !until.isAfter(now.plusSeconds(LONGEST_SECONDS)));
    }

    static Duration pause(int failures) {
        if (failures <= FREE) {
            return Duration.ZERO;
        }
        int doublings = Math.min(failures - FREE, 11);
        return Duration.ofSeconds(Math.min(LONGEST_SECONDS, 1L << doublings));
    }
}
