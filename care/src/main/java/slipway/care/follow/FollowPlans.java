package slipway.care.follow;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.zip.CRC32;
import slipway.care.follow.HomeExercise.LoadAt;
import slipway.care.visit.VisitPlan;
import slipway.exercises.exercise.Exercise;
import slipway.reasoning.dose.DosedExercise;
import slipway.reasoning.plan.PlanResult;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.ladder.Ladder;
import slipway.reasoning.response.propose.FollowedPlan;

/** From the plan of a visit to what is followed at home. */
public final class FollowPlans {
    private FollowPlans() {}

    /** The exercises of a plan with their ladders and ceilings, see {@link #home}. */
    public static FollowedPlan of(VisitPlan visit) {
        return home(visit).followed();
    }

    /**
     * What a plan gives for home. The ceiling is the given dose and one step of repetitions more, unless the case sets
     * another; the range never goes beyond the given one. Companions keep their own dose. Solves the postures on the way of
     * each glide.
     *
     * @throws java.util.NoSuchElementException if the screening stops the plan: then nothing is given
     */
    public static HomePlan home(VisitPlan visit) {
        PlanResult result = visit.result().orElseThrow();
        Optional<RungLoads> loads = RungLoads.of(result);
        var exercises = new ArrayList<HomeExercise>();
        visit.given().forEach(dosed -> exercises.add(glide(visit, dosed, loads)));
        visit.companions().forEach(companion -> exercises.add(companion(companion.exercise())));
        return new HomePlan(
                result.plan().irritability().level(),
                exercises,
                seed(visit.file().id()));
    }

    private static HomeExercise glide(VisitPlan visit, DosedExercise dosed, Optional<RungLoads> known) {
        List<LoadAt> loads =
                known.map(each -> each.peaks(dosed, Ladder.rangeFractions())).orElse(List.of());
        return new HomeExercise(
                dosed.range().candidate().id(),
                false,
                HomeDose.of(dosed.dose()),
                ceiling(visit, dosed),
                loads,
                loads.isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(known.orElseThrow().logSd(dosed)));
    }

    /** One rung: its own dose. */
    private static HomeExercise companion(Exercise exercise) {
        var own = exercise.dose();
        double seconds = exercise.movement().motion(Map.of()).seconds() / 2;
        var dose = new HomeDose(own.repetitions(), own.sets(), own.sessionsPerDay(), 1, seconds);
        var ceiling = new Ceiling(own.repetitions(), own.sessionsPerDay(), 1);
        return new HomeExercise(exercise.id(), true, dose, ceiling, List.of(), OptionalDouble.empty());
    }

    private static Ceiling ceiling(VisitPlan visit, DosedExercise dosed) {
        String id = dosed.range().candidate().id();
        Ceiling usual = Ceiling.usual(dosed.dose());
        return Optional.ofNullable(visit.file().choices().ceilings().get(id))
                .map(set -> new Ceiling(
                        set.repetitions().orElse(usual.repetitions()),
                        set.sessionsPerDay().orElse(usual.sessionsPerDay()),
                        1))
                .orElse(usual);
    }

    /** The same case gives the same estimate. */
    private static long seed(String caseId) {
        var crc = new CRC32();
        crc.update(caseId.getBytes(StandardCharsets.UTF_8));
        return crc.getValue();
    }
}
