package slipway.care.figure;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import slipway.care.facts.EpisodeFacts;
import slipway.care.facts.Treatment;
import slipway.care.follow.FollowPlans;
import slipway.care.record.chart.TryEntry;
import slipway.care.visit.VisitPlan;
import slipway.pictures.course.CourseStory;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.course.CourseReport;
import slipway.reasoning.course.MeasureCourse;
import slipway.reasoning.course.Outlook;
import slipway.reasoning.measures.Measure;
import slipway.reasoning.response.checkin.CheckIn;
import slipway.reasoning.response.checkin.Session;
import slipway.reasoning.response.course.Flare;
import slipway.reasoning.response.propose.Followed;
import slipway.reasoning.response.propose.NextDose;
import slipway.reasoning.response.propose.RespondResult;

/** The course of an episode as it is drawn. */
public final class CourseStories {
    private static final int USUAL_WEEKS = 8;
    private static final double GOOD_RISE =
            Coefficients.load("response/course.csv").value("good-rise");
    private static final double GOOD_SETTLE =
            Coefficients.load("response/course.csv").value("good-settle");

    private final EpisodeFacts facts;
    private final VisitPlan plan;
    private final CourseReport report;
    private final LocalDate start;

    private CourseStories(EpisodeFacts facts, VisitPlan plan, CourseReport report, LocalDate start) {
        this.facts = facts;
        this.plan = plan;
        this.report = report;
        this.start = start;
    }

    /**
     * The story up to the day of the report. The dose is that of one exercise in rungs from 1: the one with the most
     * reports, or the first that was given for home.
     *
     * @param plan whose exercises are followed
     * @param followed what came of the reports from home, if there were any
     */
    public static CourseStory of(EpisodeFacts facts, VisitPlan plan, CourseReport report, Optional<Followed> followed) {
        LocalDate start = facts.start()
                .orElseThrow(() -> new IllegalArgumentException("a course needs a first day, and none is known"));
        return new CourseStories(facts, plan, report, start).story(followed);
    }

    private CourseStory story(Optional<Followed> followed) {
        return new CourseStory(
                facts.frame().dosage().weeks().orElse(USUAL_WEEKS),
                "rung",
                steps(followed),
                sessions(),
                List.of(),
                report.measures().stream().map(this::strip).toList(),
                facts.visitsUpTo(report.asOf()).stream().map(this::flag).toList());
    }

    private List<CourseStory.Step> steps(Optional<Followed> followed) {
        String shown = followed.flatMap(CourseStories::mostReported)
                .or(() -> given().findFirst().map(TryEntry::exerciseId))
                .orElse("");
        var steps = new ArrayList<CourseStory.Step>();
        for (Treatment visit : facts.visitsUpTo(report.asOf())) {
            boolean first = steps.isEmpty() && visit.tries().stream().anyMatch(each -> isGiven(each, shown));
            if (first) {
                FollowPlans.of(plan)
                        .find(shown)
                        .ifPresent(exercise -> steps.add(new CourseStory.Step(
                                day(visit.day()), exercise.ladder().start() + 1.0)));
            }
        }
        followed.ifPresent(known -> answers(known, shown, steps));
        return steps;
    }

    private Stream<TryEntry> given() {
        return facts.visitsUpTo(report.asOf()).stream()
                .flatMap(visit -> visit.tries().stream())
                .filter(TryEntry::released);
    }

    private static boolean isGiven(TryEntry entry, String exerciseId) {
        return entry.released() && entry.exerciseId().equals(exerciseId);
    }

    private void answers(Followed followed, String shown, List<CourseStory.Step> steps) {
        Map<String, LocalDate> days = new LinkedHashMap<>();
        facts.checkIns()
                .forEach(checkIn -> days.put(checkIn.id(), checkIn.reportedAt().toLocalDate()));
        for (RespondResult result : followed.results()) {
            LocalDate day = days.get(result.checkinId());
            Optional<NextDose> next =
                    result.nextDose().filter(dose -> dose.exercise().equals(shown));
            if (day == null || day.isBefore(start) || next.isEmpty()) {
                continue;
            }
            double rung = next.get().rung() + 1.0;
            if (steps.isEmpty() || steps.get(steps.size() - 1).dose() != rung) {
                steps.add(new CourseStory.Step(day(day), rung));
            }
        }
    }

    private static Optional<String> mostReported(Followed followed) {
        var count = new LinkedHashMap<String, Integer>();
        followed.results()
                .forEach(result -> result.nextDose().ifPresent(next -> count.merge(next.exercise(), 1, Integer::sum)));
        return count.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    private List<CourseStory.Session> sessions() {
        var sessions = new LinkedHashMap<String, Session>();
        for (CheckIn checkIn : facts.checkIns()) {
            if (!checkIn.reportedAt().toLocalDate().isAfter(report.asOf())) {
                sessions.merge(checkIn.sessionId(), Session.of(checkIn), Session::with);
            }
        }
        return sessions.values().stream()
                .filter(session -> !session.rest() && session.day() >= start.toEpochDay())
                .map(this::session)
                .toList();
    }

    private CourseStory.Session session(Session session) {
        boolean good = session.rise() <= GOOD_RISE && session.settleMinutes() <= GOOD_SETTLE;
        CourseStory.Response response = good ? CourseStory.Response.GOOD : CourseStory.Response.MIXED;
        double settle = session.settleMinutes();
        return new CourseStory.Session(
                day(LocalDate.ofEpochDay(session.day())),
                Flare.reported(session) ? CourseStory.Response.FLARE : response,
                Double.isFinite(settle) ? OptionalDouble.of(settle) : OptionalDouble.empty());
    }

    private CourseStory.Strip strip(MeasureCourse course) {
        Measure measure = course.measure();
        // Two scores differ by more than error beyond the detectable change; one score alone has it by the root of two.
        OptionalDouble error = measure.thresholds()
                .mdc()
                .map(mdc -> OptionalDouble.of(mdc.value() / Math.sqrt(2)))
                .orElse(OptionalDouble.empty());
        return new CourseStory.Strip(
                measure.name(),
                measure.range().low(),
                measure.range().high(),
                measure.range().better().gain(0, 1) > 0,
                error,
                course.series().scores().stream()
                        .filter(score -> !score.day().isBefore(start))
                        .map(score -> new CourseStory.Dot(day(score.day()), score.score()))
                        .toList(),
                aim(measure));
    }

    private Optional<CourseStory.Aim> aim(Measure measure) {
        return report.goals().stream()
                .filter(outlook -> outlook.goal().measure().id().equals(measure.id()))
                .filter(outlook -> !outlook.goal().due().isBefore(start))
                .findFirst()
                .map(this::aim);
    }

    private CourseStory.Aim aim(Outlook outlook) {
        return new CourseStory.Aim(day(outlook.goal().due()), outlook.goal().target(), outlook.chance());
    }

    private CourseStory.Flag flag(Treatment visit) {
        return new CourseStory.Flag(
                day(visit.day()), CourseStory.Flag.Kind.VISIT, "visit " + visit.number() + ", " + visit.day());
    }

    private int day(LocalDate day) {
        return (int) ChronoUnit.DAYS.between(start, day);
    }
}
