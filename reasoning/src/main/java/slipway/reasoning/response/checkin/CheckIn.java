package slipway.reasoning.response.checkin;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One report on one session, as it was sent; the components are the columns of the file. What was not told is empty and
 * never counts as harmless. A session may get several reports, for example one more the next morning.
 *
 * @param id tells a repeated sending from a new report
 * @param startedAt by the clock of the person's device
 * @param before symptoms before the session, 0 to 10
 * @param repetitionsDone reported; 0 for a day of rest
 * @param worst the worst during the session, 0 to 10
 * @param usualPain for pain, whether it is the pain that the person knows
 * @param settleMinutes until back to usual; infinite if that had not come when the report was made
 * @param stillNumb numb now where the person was not before
 * @param flareExercise the exercise that brought the symptoms up, if it was another one
 * @param reportedAt by the clock that received the report
 */
public record CheckIn(
        String id,
        String sessionId,
        String exercise,
        OffsetDateTime startedAt,
        OptionalInt before,
        OptionalInt repetitionsDone,
        OptionalInt worst,
        Optional<Kind> kind,
        Optional<Boolean> usualPain,
        Optional<Reach> reach,
        OptionalDouble settleMinutes,
        Optional<Morning> nextMorning,
        boolean stillNumb,
        boolean newWeakness,
        EmergencyAnswer emergency,
        Optional<String> flareExercise,
        OffsetDateTime reportedAt) {
    /** End of the scale of symptoms. */
    public static final int WORST = 10;
    /** More repetitions in one session than this are a slip of the pen. */
    public static final int MOST_REPETITIONS = 200;
    /** Longest settle time that can be told in minutes: two days. */
    public static final double LONGEST_SETTLE_MINUTES = 2 * 24 * 60;

    public CheckIn {
        var mistakes = new ArrayList<String>();
        check(mistakes, !id.isBlank() && !sessionId.isBlank() && !exercise.isBlank(), "an id is blank");
        within(mistakes, "before", before, WORST);
        within(mistakes, "worst", worst, WORST);
        within(mistakes, "repetitions_done", repetitionsDone, MOST_REPETITIONS);
        double settle = settleMinutes.orElse(0);
        check(
                mistakes,
                settle >= 0 && (settle <= LONGEST_SETTLE_MINUTES || settle == Double.POSITIVE_INFINITY),
                "settle_minutes must be within 0 and %.0f min, was %s".formatted(LONGEST_SETTLE_MINUTES, settle));
        if (!mistakes.isEmpty()) {
            throw new IllegalArgumentException("check-in %s: %s".formatted(id, String.join("; ", mistakes)));
        }
    }

    private static void within(List<String> mistakes, String what, OptionalInt value, int most) {
        check(
                mistakes,
                value.orElse(0) >= 0 && value.orElse(0) <= most,
                "%s must be within 0 and %d, was %d".formatted(what, most, value.orElse(0)));
    }

    private static void check(List<String> mistakes, boolean kept, String otherwise) {
        if (!kept) {
            mistakes.add(otherwise);
        }
    }

    /** Whether both say the same; a report that is sent again is received later. */
    public boolean sameContent(CheckIn other) {
        return equals(other.receivedAt(reportedAt));
    }

    private CheckIn receivedAt(OffsetDateTime time) {
        return new CheckIn(
                id,
                sessionId,
                exercise,
                startedAt,
                before,
                repetitionsDone,
                worst,
                kind,
                usualPain,
                reach,
                settleMinutes,
                nextMorning,
                stillNumb,
                newWeakness,
                emergency,
                flareExercise,
                time);
    }

    /** The exercise that the report counts for. */
    public String answersFor() {
        return flareExercise.orElse(exercise);
    }
}
