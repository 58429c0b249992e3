package slipway.reasoning.course;

import java.time.LocalDate;
import slipway.reasoning.measures.Measure;

/**
 * A goal that can be seen to be met: who will do what, under which condition, how well, by when. Only {@link GoalCheck}
 * makes one.
 *
 * @param id stays with the goal through the episode
 * @param activity something of daily life, in the words of the person
 * @param target more than the error of the measure away from the baseline
 */
public record Goal(
        String id,
        String person,
        String activity,
        String condition,
        Measure measure,
        double baseline,
        double target,
        LocalDate due) {

    /** Whether a score meets it. */
    public boolean met(double score) {
        return measure.range().better().atLeastAsGood(score, target);
    }

    /** The goal as one sentence. */
    public String sentence() {
        String under = condition.isBlank() ? "" : " " + condition;
        return "%s will %s%s: %s from %s to %s by %s."
                .formatted(person, activity, under, measure.name(), measure.text(baseline), measure.text(target), due);
    }
}
