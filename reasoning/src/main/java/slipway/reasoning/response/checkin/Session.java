package slipway.reasoning.response.checkin;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * What is known of one session with one exercise. Numbers that were not told are {@link #NOT_TOLD}: a comparison with it
 * is never true, so that nothing good follows from silence.
 *
 * @param startMinute minutes since 1970 in UTC, by whichever of the two clocks says earlier
 * @param day days since 1970 by the person's calendar
 * @param before symptoms before, 0 to 10
 * @param worst the worst during it, 0 to 10
 * @param repetitionsDone reported; 0 for a day of rest
 * @param settleMinutes until back to usual; infinite if not settled when last told
 * @param morning 1 worse, 0 not worse
 * @param reach order of {@link Reach}
 * @param newPain whether pain came that is not the usual one
 */
public record Session(
        String id,
        long startMinute,
        long day,
        double before,
        double worst,
        double repetitionsDone,
        double settleMinutes,
        double morning,
        double reach,
        boolean newPain,
        boolean stillNumb,
        boolean newWeakness,
        EmergencyAnswer emergency) {
    /** Not told. */
    public static final double NOT_TOLD = Double.NaN;

    public Session {
        requireWithin("before", before, CheckIn.WORST);
        requireWithin("worst", worst, CheckIn.WORST);
        requireWithin("repetitions", repetitionsDone, CheckIn.MOST_REPETITIONS);
        requireWithin("settle minutes", settleMinutes, Double.POSITIVE_INFINITY);
        requireWithin("morning", morning, 1);
        requireWithin("reach", reach, Reach.values().length - 1);
    }

    private static void requireWithin(String what, double value, double most) {
        if (!Double.isNaN(value) && !(value >= 0 && value <= most)) {
            throw new IllegalArgumentException("%s must be within 0 and %s, was %s".formatted(what, most, value));
        }
    }

    /** What one report says. */
    public static Session of(CheckIn report) {
        OffsetDateTime start =
                report.startedAt().isAfter(report.reportedAt()) ? report.reportedAt() : report.startedAt();
        return new Session(
                report.sessionId(),
                Duration.ofSeconds(start.toEpochSecond()).toMinutes(),
                start.toLocalDate().toEpochDay(),
                number(report.before().isPresent(), report.before().orElse(0)),
                number(report.worst().isPresent(), report.worst().orElse(0)),
                number(
                        report.repetitionsDone().isPresent(),
                        report.repetitionsDone().orElse(0)),
                report.settleMinutes().orElse(NOT_TOLD),
                report.nextMorning()
                        .map(morning -> morning == Morning.WORSE ? 1.0 : 0.0)
                        .orElse(NOT_TOLD),
                report.reach().map(reach -> (double) reach.ordinal()).orElse(NOT_TOLD),
                report.kind().equals(Optional.of(Kind.PAIN))
                        && report.usualPain().equals(Optional.of(false)),
                report.stillNumb(),
                report.newWeakness(),
                report.emergency());
    }

    private static double number(boolean told, double value) {
        return told ? value : NOT_TOLD;
    }

    /** Both reports on the same session as one: what one left out the other says; where both speak the worse counts. */
    public Session with(Session other) {
        if (!id.equals(other.id)) {
            throw new IllegalArgumentException("reports on sessions %s and %s are not one".formatted(id, other.id));
        }
        boolean first = startMinute <= other.startMinute;
        return new Session(
                id,
                Math.min(startMinute, other.startMinute),
                first ? day : other.day,
                // A low level before makes the rise larger.
                less(before, other.before),
                more(worst, other.worst),
                more(repetitionsDone, other.repetitionsDone),
                more(settleMinutes, other.settleMinutes),
                more(morning, other.morning),
                more(reach, other.reach),
                newPain || other.newPain,
                stillNumb || other.stillNumb,
                newWeakness || other.newWeakness,
                emergency.orMore(other.emergency));
    }

    private static double more(double a, double b) {
        return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.max(a, b);
    }

    private static double less(double a, double b) {
        return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.min(a, b);
    }

    /** How far symptoms rose over the level before; not below 0. */
    public double rise() {
        double rise = worst - before;
        return Double.isNaN(rise) ? NOT_TOLD : Math.max(0, rise);
    }

    /** Whether this was a day without exercise. */
    public boolean rest() {
        return repetitionsDone == 0;
    }
}
