package slipway.reasoning.response.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.reasoning.dose.DoseLadder;
import slipway.reasoning.dose.StartRule;
import slipway.reasoning.response.checkin.Session;
import slipway.reasoning.response.course.Course;
import slipway.reasoning.response.course.DoneSession;
import slipway.reasoning.response.course.Flare;
import slipway.reasoning.response.estimate.EstimateSettings;
import slipway.reasoning.response.estimate.FilterModel;
import slipway.reasoning.response.estimate.Particles;
import slipway.reasoning.response.estimate.Stress;
import slipway.reasoning.response.estimate.WeekAhead;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.propose.VisitProposal.Candidate;
import slipway.reasoning.response.propose.VisitProposal.Since;

/** The doses to propose at a visit, one for each glide, by {@link VisitDose}. */
public final class VisitProposals {
    private final FollowedPlan plan;
    private final List<DoseSet> sets;
    private final PersonState state;
    private final StartRule start;
    private final Optional<Particles> particles;

    private VisitProposals(FollowedPlan given, List<DoseSet> sets, PersonState state, StartRule start) {
        this.plan = given.with(sets);
        this.sets = List.copyOf(sets);
        this.state = state;
        this.start = start;
        this.particles = state.filter().map(filter -> Particles.from(FilterModel.bundled(), filter, plan.seed()));
    }

    /**
     * One proposal for each glide of a plan; none while everything is stopped.
     *
     * @param given the plan as it was given
     * @param sets what was set since, oldest first
     * @param start bounds of the first dose for this person's irritability
     */
    public static List<VisitProposal> of(FollowedPlan given, List<DoseSet> sets, Followed followed, StartRule start) {
        if (followed.state().lock().isPresent()) {
            return List.of();
        }
        var proposals = new VisitProposals(given, sets, followed.state(), start);
        return proposals.plan.exercises().stream()
                .filter(exercise -> !exercise.companion())
                .map(proposals::propose)
                .toList();
    }

    /** What is allowed at most from a dose on: one step of repetitions, or what the first dose may reach. */
    public static Ceiling ceiling(HomeDose dose, StartRule start) {
        int more = DoseLadder.repetitions().stream()
                .filter(step -> step > dose.repetitions())
                .findFirst()
                .orElse(dose.repetitions());
        return new Ceiling(
                Math.max(more, start.repetitionsHigh()), Math.max(dose.sessionsPerDay(), start.sessionsHigh()), 1);
    }

    private VisitProposal propose(FollowedExercise exercise) {
        Since since = since(exercise);
        boolean flared = since.flares() > 0;
        List<HomeDose> doses = VisitDose.candidates(since.given(), since.now(), flared, start.sessionsHigh());
        HomeDose dose = VisitDose.next(
                since.given(), since.now(), flared, start.sessionsHigh(), each -> allowed(excess(exercise, each)));
        List<Candidate> candidates = doses.stream()
                .map(each -> new Candidate(each, excess(exercise, each), allowed(excess(exercise, each))))
                .toList();
        return new VisitProposal(
                exercise.id(),
                since,
                dose,
                ceiling(dose, start),
                candidates,
                VisitReasons.of(since, dose, candidates, start));
    }

    private Since since(FollowedExercise exercise) {
        var ladder = exercise.ladder();
        Optional<Course> course = Optional.ofNullable(state.courses().get(exercise.id()));
        long from = sets.stream()
                .filter(set -> set.exercise().id().equals(exercise.id()))
                .mapToLong(set -> Math.floorDiv(set.at().toEpochSecond(), 60L))
                .max()
                .orElse(Long.MIN_VALUE);
        List<Session> done = course.stream()
                .flatMap(known -> known.sessions().stream())
                .map(DoneSession::session)
                .filter(session -> session.startMinute() >= from && !session.rest())
                .toList();
        return new Since(
                ladder.dose(ladder.start()),
                course.map(Course::dose).orElseGet(() -> ladder.dose(ladder.start())),
                ladder.ceiling(),
                course.filter(Course::stopped).isPresent(),
                done.size(),
                (int) done.stream().filter(Flare::reported).count());
    }

    private static boolean allowed(OptionalDouble excess) {
        return excess.isEmpty() || excess.getAsDouble() <= EstimateSettings.LIMIT;
    }

    private OptionalDouble excess(FollowedExercise own, HomeDose dose) {
        if (particles.isEmpty() || own.peakLoad().isEmpty()) {
            return OptionalDouble.empty();
        }
        var week = new WeekAhead(particles.get().size());
        week.clear();
        double peak = own.peakLoad().get(own.ladder().given());
        week.add(particles.get(), Stress.log(peak, dose), dose.sessionsPerDay());
        for (FollowedExercise other : plan.exercises()) {
            if (!other.id().equals(own.id()) && !other.peakLoad().isEmpty()) {
                asItIs(other, week);
            }
        }
        return OptionalDouble.of(week.excess(particles.get(), RestFlares.chance(restSessions())));
    }

    private void asItIs(FollowedExercise other, WeekAhead week) {
        Course course = state.courses().get(other.id());
        if (course == null || !course.stopped()) {
            int rung = course == null ? other.ladder().start() : course.rung();
            int sessions = other.ladder().dose(rung).sessionsPerDay();
            week.add(particles.orElseThrow(), Tracker.logStress(other, rung), sessions);
        }
    }

    private List<Session> restSessions() {
        var sessions = new ArrayList<Session>();
        for (FollowedExercise exercise : plan.exercises()) {
            Course course = state.courses().get(exercise.id());
            if (course != null && !exercise.peakLoad().isEmpty()) {
                course.sessions().forEach(done -> sessions.add(done.session()));
            }
        }
        return sessions;
    }
}
