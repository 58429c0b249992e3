package slipway.reasoning.response.propose;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.reasoning.response.calibration.Forecast;
import slipway.reasoning.response.checkin.CheckIn;
import slipway.reasoning.response.checkin.Session;
import slipway.reasoning.response.course.Course;
import slipway.reasoning.response.course.Ruled;
import slipway.reasoning.response.rules.Decision;
import slipway.reasoning.tolerance.Interval;

/** Answers the reports of one person on one plan. */
public final class Responder {
    private FollowedPlan plan;
    private final Map<String, Course> courses = new LinkedHashMap<>();
    private final Optional<Tracker> tracker;
    private final List<Forecast> forecasts = new ArrayList<>();
    private Optional<Decision> lock = Optional.empty();

    private Responder(FollowedPlan plan) {
        this.plan = plan;
        this.tracker = plan.prior().map(prior -> new Tracker(prior, plan.seed()));
    }

    /**
     * One result for each check-in, and where the person stands then. The order of the collections does not matter, nor
     * does a check-in that is there more than once.
     *
     * @throws LogConflictException if an id came with different content, or an exercise was not given
     */
    public static Followed respond(FollowedPlan plan, Collection<CheckIn> checkIns, Collection<Release> releases) {
        return respond(plan, checkIns, releases, List.of());
    }

    /**
     * The same with doses that the therapist set between reports.
     *
     * @throws LogConflictException as above, or if a dose was set for an exercise that was not given
     */
    public static Followed respond(
            FollowedPlan plan, Collection<CheckIn> checkIns, Collection<Release> releases, Collection<DoseSet> sets) {
        Log log = Log.of(checkIns, releases, sets);
        var responder = new Responder(plan);
        var results = new ArrayList<RespondResult>();
        OffsetDateTime last = OffsetDateTime.MIN;
        for (CheckIn checkIn : log.checkIns()) {
            responder.releaseIf(log.releasedBetween(last, checkIn.reportedAt()));
            log.setBetween(last, checkIn.reportedAt()).forEach(responder::set);
            results.add(responder.answer(checkIn));
            last = checkIn.reportedAt();
        }
        responder.releaseIf(log.releasedBetween(last, OffsetDateTime.MAX));
        log.setBetween(last, OffsetDateTime.MAX).forEach(responder::set);
        return new Followed(results, responder.forecasts, responder.state());
    }

    private void releaseIf(boolean released) {
        if (released) {
            lock = Optional.empty();
            courses.replaceAll((id, course) -> course.released());
        }
    }

    private void set(DoseSet set) {
        FollowedExercise next = set.exercise();
        if (plan.find(next.id()).isEmpty()) {
            throw new LogConflictException("a dose was set for %s, which was not given".formatted(next.id()));
        }
        plan = plan.with(List.of(set));
        long minute = Math.floorDiv(set.at().toEpochSecond(), 60L);
        Course known = courses.get(next.id());
        courses.put(
                next.id(),
                known == null
                        ? Course.start(next.ladder(), next.companion(), minute)
                        : known.anew(next.ladder(), minute));
    }

    private RespondResult answer(CheckIn checkIn) {
        FollowedExercise exercise = plan.find(checkIn.answersFor())
                .orElseThrow(() -> new LogConflictException(
                        "check-in %s is on %s, which was not given".formatted(checkIn.id(), checkIn.answersFor())));
        Session session = Session.of(checkIn);
        Course before = courses.getOrDefault(
                exercise.id(), Course.start(exercise.ladder(), exercise.companion(), session.startMinute()));
        Course course = before.with(session);
        courses.put(exercise.id(), course);
        long nowMinute = Math.floorDiv(checkIn.reportedAt().toEpochSecond(), 60L);
        Ruled ruled = Ruled.on(course, session.id(), nowMinute, lock.isPresent());
        Optional<Outlook> outlook = outlook(exercise, course, session.id());
        if (outlook.isPresent()) {
            ruled = ruled.withEstimate(outlook.get().overLimit(), outlook.get().nextOverLimit());
        }
        Course moved = ruled.moveTo(ruled.mostRung());
        courses.put(exercise.id(), moved);
        lockIf(ruled.ruling().decision());
        if (lock.isEmpty() && !moved.stopped()) {
            outlook.ifPresent(look -> forecasts.add(new Forecast(nowMinute, look.chance(moved.rung()))));
        }
        return result(checkIn.id(), exercise, ruled, moved, outlook);
    }

    private void lockIf(Decision decision) {
        boolean locks = decision == Decision.EMERGENCY || decision == Decision.CONTACT_SAME_DAY;
        if (locks && lock.filter(known -> known.compareTo(decision) <= 0).isEmpty()) {
            lock = Optional.of(decision);
        }
    }

    private Optional<Outlook> outlook(FollowedExercise exercise, Course course, String sessionId) {
        if (tracker.isEmpty() || exercise.peakLoad().isEmpty()) {
            return Optional.empty();
        }
        tracker.get().take(exercise, course, sessionId);
        return Optional.of(Outlook.of(tracker.get(), plan, courses, exercise, course));
    }

    private RespondResult result(
            String checkInId, FollowedExercise exercise, Ruled ruled, Course moved, Optional<Outlook> outlook) {
        boolean stopped = lock.isPresent() || moved.stopped();
        Optional<NextDose> next =
                stopped ? Optional.empty() : Optional.of(new NextDose(exercise.id(), moved.rung(), moved.dose()));
        Optional<Interval> chance = stopped ? Optional.empty() : outlook.map(look -> look.interval(moved.rung()));
        return new RespondResult(
                checkInId,
                ruled.ruling().decision(),
                ruled.ruling().ids(),
                chance,
                next,
                CeilingView.of(exercise.ladder()),
                ruled.ruling().asks().contact(),
                Explanation.of(ruled, moved, outlook));
    }

    private PersonState state() {
        return new PersonState(
                courses,
                lock,
                tracker.flatMap(Tracker::state),
                tracker.map(known -> known.particles().effective()).orElse(0.0));
    }
}
