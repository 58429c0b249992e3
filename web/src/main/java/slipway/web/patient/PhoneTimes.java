package slipway.web.patient;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * When a report was made and its session began, by the clock of the server. The phone tells by its own clock when it
 * made the report and when it sends it; the difference is how old the report is, whatever its clock shows. So reports
 * get their place by when they were made, and the order in which they arrive does not matter.
 *
 * @param unsure whether the phone told nothing that can be used, or its clock was set meanwhile: then a bound stands for
 *     the time
 */
record PhoneTimes(OffsetDateTime startedAt, OffsetDateTime reportedAt, boolean unsure) {
    private static final int MOST_OFFSET_MINUTES = 14 * 60;
    /** Nobody exercises longer in one go; a form that was begun and finished much later began then. */
    private static final Duration LONGEST_SESSION = Duration.ofHours(12);

    /**
     * What the phone tells, in milliseconds of its own clock.
     *
     * @param begun when the session began
     * @param made when the report was finished
     * @param sent when it was sent, this time
     * @param offsetMinutes its clock against UTC, east positive
     */
    record Told(OptionalLong begun, OptionalLong made, OptionalLong sent, OptionalLong offsetMinutes) {}

    /**
     * Times of a report.
     *
     * @param received by the clock of the server
     * @param earliest nothing was made before this, for example because the plan was not given yet
     * @param usual offset where the phone tells none
     */
    static PhoneTimes of(Told told, Instant received, Instant earliest, ZoneOffset usual) {
        ZoneOffset offset = offset(told.offsetMinutes()).orElse(usual);
        Optional<Duration> age = between(told.made(), told.sent());
        Instant made = received.minus(age.orElse(Duration.ZERO));
        boolean unsure = told.made().isPresent() && age.isEmpty();
        if (made.isBefore(earliest)) {
            made = earliest.isBefore(received) ? earliest : received;
            unsure = true;
        }
        Duration lasted = between(told.begun(), told.made()).orElse(Duration.ZERO);
        Instant began = made.minus(lasted.compareTo(LONGEST_SESSION) > 0 ? Duration.ZERO : lasted);
        return new PhoneTimes(at(began, offset), at(made, offset), unsure);
    }

    private static OffsetDateTime at(Instant time, ZoneOffset offset) {
        return time.truncatedTo(ChronoUnit.SECONDS).atOffset(offset);
    }

    /** Empty if one is missing or they are in no order. */
    private static Optional<Duration> between(OptionalLong from, OptionalLong to) {
        if (from.isEmpty() || to.isEmpty() || from.getAsLong() < 0 || to.getAsLong() < from.getAsLong()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Duration.ofMillis(Math.subtractExact(to.getAsLong(), from.getAsLong())))
                    .filter(found -> found.compareTo(Duration.ofDays(3650)) < 0);
        } catch (ArithmeticException e) {
            return Optional.empty();
        }
    }

    private static Optional<ZoneOffset> offset(OptionalLong minutes) {
        try {
            return minutes.isEmpty() || Math.abs(minutes.getAsLong()) > MOST_OFFSET_MINUTES
                    ? Optional.empty()
                    : Optional.of(ZoneOffset.ofTotalSeconds((int) minutes.getAsLong() * 60));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
