package slipway.care.facts;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import slipway.care.casefile.CaseFile;
import slipway.reasoning.course.CourseInput;
import slipway.reasoning.course.CourseReport;
import slipway.reasoning.course.Dated;
import slipway.reasoning.course.Discharge;
import slipway.reasoning.course.Goal;
import slipway.reasoning.course.GoalCheck;
import slipway.reasoning.course.GoalDraft;
import slipway.reasoning.course.Series;
import slipway.reasoning.deadlines.Deadline;
import slipway.reasoning.response.checkin.CheckIn;

/**
 * What is known of an episode.
 *
 * @param file the case as it stands
 * @param frame who treats, who referred, what was sent
 * @param visits in the order of their days
 * @param scores in the order of their days; corrected ones left out
 * @param goals as written, also those that are not complete
 * @param checkIns in the order in which they were received
 * @param ending how it went without visits, and what to do if it comes back
 */
public record EpisodeFacts(
        CaseFile file,
        Frame frame,
        List<Treatment> visits,
        List<Taken> scores,
        List<GoalDraft> goals,
        List<CheckIn> checkIns,
        Ending ending) {
    public EpisodeFacts {
        visits = visits.stream().sorted(Comparator.comparing(Treatment::day)).toList();
        scores = scores.stream().sorted(Comparator.comparing(Taken::day)).toList();
        goals = List.copyOf(goals);
        checkIns = List.copyOf(checkIns);
    }

    /** How care may end. */
    public record Ending(Discharge.Alone alone, Optional<Discharge.RelapsePlan> relapsePlan) {
        /** Nothing known. */
        public static final Ending UNKNOWN = new Ending(Discharge.Alone.UNKNOWN, Optional.empty());
    }

    /** The same with reports from home. */
    public EpisodeFacts withCheckIns(List<CheckIn> reports) {
        return new EpisodeFacts(file, frame, visits, scores, goals, reports, ending);
    }

    /** First day of care: that of the first visit, or of the first score if no visit was recorded. */
    public Optional<LocalDate> start() {
        return visits.stream()
                .map(Treatment::day)
                .findFirst()
                .or(() -> scores.stream().map(Taken::day).findFirst());
    }

    /** The scores of each measure, in the order in which the measures first came up. */
    public List<Series> series() {
        var byMeasure = new LinkedHashMap<String, List<Dated>>();
        for (Taken taken : scores) {
            taken.score()
                    .ifPresent(score -> byMeasure
                            .computeIfAbsent(taken.measure().id(), none -> new ArrayList<>())
                            .add(new Dated(taken.day(), score)));
        }
        var series = new ArrayList<Series>();
        byMeasure.forEach((id, dated) -> series.add(new Series(Taken.measure(id), dated)));
        return series;
    }

    /** The goals that say all that a goal must say. */
    public List<Goal> completeGoals() {
        LocalDate written = start().orElse(LocalDate.MIN);
        return goals.stream()
                .flatMap(draft -> GoalCheck.of(draft, written).goal().stream())
                .toList();
    }

    /** Where the episode stands on a day; empty before its first day, or if that day is not known. */
    public Optional<CourseReport> course(LocalDate asOf) {
        return start().filter(first -> !asOf.isBefore(first))
                .map(first -> CourseReport.of(
                        new CourseInput(first, series(), completeGoals(), ending.alone(), ending.relapsePlan()), asOf));
    }

    /** What is due by the payer's terms, as it stands on a day; empty without a visit or without terms. */
    public List<Deadline> deadlines(LocalDate asOf) {
        return PapersDue.of(frame, visitsUpTo(asOf).stream().map(Treatment::day).toList(), asOf);
    }

    /** The visits up to a day, that day included. */
    public List<Treatment> visitsUpTo(LocalDate day) {
        return visits.stream().filter(visit -> !visit.day().isAfter(day)).toList();
    }
}
