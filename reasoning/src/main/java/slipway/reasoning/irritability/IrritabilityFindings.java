package slipway.reasoning.irritability;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the history and the tests say about irritability. What was not asked is empty, and is never read as harmless.
 *
 * @param restPain pain at rest, 0 to 10
 * @param nightPain pain at night, 0 to 10
 * @param worstPain worst pain of the last day or week, 0 to 10
 * @param trivialFlareMinutes how long a trivial activity flares the symptoms; 0 if it does not
 * @param settleMinutes how long symptoms take to settle after being provoked
 * @param raisedLegOnsetDeg onset in the straight leg raise
 * @param onlyAtEndRange whether movement provokes only at the end of its range
 * @param judgement the therapist's own
 */
public record IrritabilityFindings(
        OptionalDouble restPain,
        OptionalDouble nightPain,
        OptionalDouble worstPain,
        OptionalDouble trivialFlareMinutes,
        OptionalDouble settleMinutes,
        OptionalDouble raisedLegOnsetDeg,
        boolean onlyAtEndRange,
        Optional<Irritability> judgement) {
    private static final double WORST = 10;
    private static final double WEEK_MINUTES = 7 * 24 * 60;
    private static final double HALF_TURN_DEG = 180;

    public IrritabilityFindings {
        var mistakes = new ArrayList<String>();
        check(mistakes, "pain at rest", restPain, WORST, "");
        check(mistakes, "pain at night", nightPain, WORST, "");
        check(mistakes, "worst pain", worstPain, WORST, "");
        check(mistakes, "duration of a flare", trivialFlareMinutes, WEEK_MINUTES, " min");
        check(mistakes, "time to settle", settleMinutes, WEEK_MINUTES, " min");
        check(mistakes, "onset of the leg raise", raisedLegOnsetDeg, HALF_TURN_DEG, " deg");
        if (!mistakes.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", mistakes));
        }
    }

    private static void check(List<String> mistakes, String what, OptionalDouble value, double most, String unit) {
        if (value.isPresent() && !(value.getAsDouble() >= 0 && value.getAsDouble() <= most)) {
            mistakes.add(
                    "%s must be within 0 and %.0f%s, was %s%s".formatted(what, most, unit, value.getAsDouble(), unit));
        }
    }

    /** Nothing known but the therapist's judgement. */
    public static IrritabilityFindings judged(Irritability judgement) {
        OptionalDouble none = OptionalDouble.empty();
        return new IrritabilityFindings(none, none, none, none, none, none, false, Optional.of(judgement));
    }
}
