package slipway.reasoning.course;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.reasoning.measures.Numbers;

/**
 * How a goal stands.
 *
 * @param latest score on the goal's measure, if there is one
 * @param chance of a score that meets the goal on its day, if things go on as they do; 0 to 1
 * @param text the same in words
 */
public record Outlook(Goal goal, State state, Optional<Dated> latest, OptionalDouble chance, String text) {
    /** Where a goal stands. */
    public enum State {
        MET,
        OPEN,
        /** Open, with too few scores for a chance. */
        TOO_FEW_SCORES,
        /** Its day has passed without it. */
        MISSED
    }

    /**
     * Of a goal on a day.
     *
     * @param scores of the goal's measure; later ones than the day don't count
     */
    static Outlook of(Goal goal, Optional<Series> scores, LocalDate asOf) {
        Optional<Series> known = scores.map(series -> series.upTo(asOf));
        Optional<Dated> latest = known.flatMap(Series::last);
        if (latest.filter(last -> goal.met(last.score())).isPresent()) {
            return new Outlook(goal, State.MET, latest, OptionalDouble.empty(), met(goal, latest.get()));
        }
        if (goal.due().isBefore(asOf)) {
            return new Outlook(goal, State.MISSED, latest, OptionalDouble.empty(), missed(goal, latest));
        }
        return open(goal, known, latest);
    }

    private static Outlook open(Goal goal, Optional<Series> known, Optional<Dated> latest) {
        int count = known.map(series -> series.scores().size()).orElse(0);
        Optional<Prediction> prediction = known.flatMap(series ->
                series.trend().flatMap(trend -> Prediction.at(trend, goal.measure(), series.weeks(goal.due()))));
        if (prediction.isEmpty()) {
            String text = count < CourseData.whole("trend-points")
                    ? "%d of the %d scores that a chance needs.".formatted(count, CourseData.whole("trend-points"))
                    : "Nothing tells how these scores scatter, so there is no chance to give.";
            return new Outlook(goal, State.TOO_FEW_SCORES, latest, OptionalDouble.empty(), text);
        }
        double chance = prediction.get().chance(goal.measure(), goal.target());
        String text = "If things go on as they do, about %s %% chance of %s by %s, from %d scores."
                .formatted(
                        Numbers.text(Math.rint(100 * chance)), goal.measure().text(goal.target()), goal.due(), count);
        return new Outlook(goal, State.OPEN, latest, OptionalDouble.of(chance), text);
    }

    private static String met(Goal goal, Dated last) {
        return "Met on %s with %s.".formatted(last.day(), goal.measure().text(last.score()));
    }

    private static String missed(Goal goal, Optional<Dated> last) {
        return last.map(score -> "Not met by %s: latest %s on %s."
                        .formatted(goal.due(), goal.measure().text(score.score()), score.day()))
                .orElse("Not met by %s: never measured.".formatted(goal.due()));
    }
}
