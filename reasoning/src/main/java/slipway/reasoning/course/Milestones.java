package slipway.reasoning.course;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.measures.Change;

/** What weeks four, six and eight of care ask for. */
final class Milestones {
    private static final String PAIN = "pain";

    private final List<MeasureCourse> measures;
    private final long days;
    private final List<Milestone> due = new ArrayList<>();

    private Milestones(List<MeasureCourse> measures, long days) {
        this.measures = measures;
        this.days = days;
    }

    /**
     * Everything that is due.
     *
     * @param start first day of care
     */
    static List<Milestone> of(LocalDate start, LocalDate asOf, List<MeasureCourse> measures) {
        var milestones = new Milestones(measures, ChronoUnit.DAYS.between(start, asOf));
        milestones.review();
        milestones.opinion();
        milestones.end();
        return milestones.due;
    }

    private void review() {
        if (!reached("review-week")) {
            return;
        }
        List<Change> changes = measures.stream()
                .map(MeasureCourse::change)
                .flatMap(Optional::stream)
                .toList();
        if (changes.isEmpty()) {
            add("review-week", Milestone.Action.MEASURE, "No measure has a second score by week %d.");
        } else if (changes.stream().noneMatch(Change::better)) {
            add(
                    "review-week",
                    Milestone.Action.EXAMINE_AGAIN,
                    "By week %d no measure is better by more than its error.");
        }
    }

    private void opinion() {
        Coefficient severe = CourseData.row("severe-pain");
        boolean hurts = measures.stream()
                .filter(each -> each.measure().id().equals(PAIN))
                .flatMap(each -> each.series().last().stream())
                .anyMatch(last -> last.score() >= severe.value());
        if (reached("opinion-week") && hurts) {
            add("opinion-week", Milestone.Action.OPINION, "Pain is still severe in week %d.");
        }
    }

    private void end() {
        if (reached("end-week")) {
            add("end-week", Milestone.Action.END_OR_REFER, "Week %d is reached.");
        }
    }

    private boolean reached(String week) {
        return days >= CourseData.weeksAsDays(week);
    }

    private void add(String row, Milestone.Action action, String text) {
        int week = CourseData.whole(row);
        due.add(new Milestone(week, action, Reason.by(CourseData.row(row), "course." + row, text.formatted(week))));
    }
}
