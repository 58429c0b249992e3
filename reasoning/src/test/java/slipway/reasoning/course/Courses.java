package slipway.reasoning.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.reasoning.measures.Measures;

/** Invented courses. */
final class Courses {
    static final LocalDate START = LocalDate.of(2026, 1, 5);

    private Courses() {}

    /** A series from pairs of week and score. */
    static Series series(String measure, double... weekAndScore) {
        var scores = new ArrayList<Dated>();
        for (int i = 0; i < weekAndScore.length; i += 2) {
            scores.add(new Dated(START.plusDays(Math.round(7 * weekAndScore[i])), weekAndScore[i + 1]));
        }
        return new Series(Measures.bundled().get(measure), scores);
    }

    static GoalDraft draft(String measure, double baseline, double target) {
        return new GoalDraft(
                "g1",
                "Ida Holm",
                "walk to the harbour and back",
                "without a rest, 20 minutes",
                Optional.of(measure),
                OptionalDouble.of(baseline),
                OptionalDouble.of(target),
                Optional.of(week(8)));
    }

    static Goal goal(String measure, double baseline, double target) {
        return GoalCheck.of(draft(measure, baseline, target), START).goal().orElseThrow();
    }

    static LocalDate week(double weeks) {
        return START.plusDays(Math.round(7 * weeks));
    }

    static CourseReport report(double week, List<Goal> goals, Series... series) {
        var input = new CourseInput(START, List.of(series), goals, Discharge.Alone.UNKNOWN, Optional.empty());
        return CourseReport.of(input, week(week));
    }
}
