package slipway.care.record.caseload;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Which episodes count in figures over all of them: those opened in a time, the newest first.
 *
 * @param from first moment of that time
 * @param until first moment behind it
 * @param recentFrom first day of the last weeks, for {@link OutcomeRow#recent()}
 * @param after the last row of the page before; empty for the first page
 * @param limit most rows, 1 to {@link #MOST}
 */
public record OutcomeAsk(
        Instant from, Instant until, LocalDate recentFrom, Optional<OutcomeRow.Place> after, int limit) {
    public static final int MOST = 20_000;

    public OutcomeAsk {
        if (limit < 1 || limit > MOST) {
            throw new IllegalArgumentException("limit must be within 1 and %d, was %d".formatted(MOST, limit));
        }
    }

    /** The first page. */
    public static OutcomeAsk first(Instant from, Instant until, LocalDate recentFrom, int limit) {
        return new OutcomeAsk(from, until, recentFrom, Optional.empty(), limit);
    }

    /** The page behind a row. */
    public OutcomeAsk behind(OutcomeRow last) {
        return new OutcomeAsk(from, until, recentFrom, Optional.of(last.place()), limit);
    }
}
