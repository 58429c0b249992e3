package slipway.reasoning.course;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is known of an episode.
 *
 * @param start first day of care
 * @param series one for each measure that was used
 * @param goals those that stand
 */
public record CourseInput(
        LocalDate start,
        List<Series> series,
        List<Goal> goals,
        Discharge.Alone alone,
        Optional<Discharge.RelapsePlan> relapsePlan) {
    public CourseInput {
        series = List.copyOf(series);
        goals = List.copyOf(goals);
        long different =
                series.stream().map(each -> each.measure().id()).distinct().count();
        if (different != series.size()) {
            throw new IllegalArgumentException("each measure must have one series of scores");
        }
    }
}
