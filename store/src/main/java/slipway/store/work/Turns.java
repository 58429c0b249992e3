package slipway.store.work;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;

/** When work is due: a row of times. */
@FunctionalInterface
public interface Turns {
    /** The newest of these times that is not after now. */
    Instant newestAt(Instant now);

    /**
     * At whole multiples of a time since 1970.
     *
     * @throws IllegalArgumentException if it is shorter than a millisecond
     */
    static Turns every(Duration length) {
        long millis = length.toMillis();
        if (millis < 1) {
            throw new IllegalArgumentException("turns must be a millisecond or more apart, were " + length);
        }
        return now -> Instant.ofEpochMilli(Math.floorDiv(now.toEpochMilli(), millis) * millis);
    }

    /** Every day at a time of a place; where the clocks leave that time out, as much later as they leave out. */
    static Turns daily(LocalTime at, ZoneId place) {
        return now -> {
            ZonedDateTime today = now.atZone(place).toLocalDate().atTime(at).atZone(place);
            return today.toInstant().isAfter(now)
                    ? now.atZone(place)
                            .toLocalDate()
                            .minusDays(1)
                            .atTime(at)
                            .atZone(place)
                            .toInstant()
                    : today.toInstant();
        };
    }
}
