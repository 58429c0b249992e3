package slipway.care.follow;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.zip.CRC32;
import slipway.care.visit.VisitPlan;
import slipway.exercises.exercise.Exercise;
import slipway.reasoning.dose.DosedExercise;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.response.estimate.Prior;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.ladder.Ladder;
import slipway.reasoning.response.propose.FollowedExercise;
import slipway.reasoning.response.propose.FollowedPlan;

/** From the plan of a visit to what is followed at home. */
public final class FollowPlans {
    private FollowPlans() {}

    /**
     * The exercises of a plan with their ladders and ceilings. The ceiling is the given dose and one step of repetitions
     * more, unless the case sets another; the range never goes beyond the given one. Companions keep
     * their own dose.
     */
    public static FollowedPlan of(VisitPlan visit) {
        List<FollowedExercise> exercises = new ArrayList<>();
        OptionalDouble sd = OptionalDouble.empty();
        Optional<RungLoads> loads = visit.result().flatMap(RungLoads::of);
        for (DosedExercise dosed : visit.given()) {
            Ladder ladder = Ladder.through(HomeDose.of(dosed.dose()), ceiling(visit, dosed));
            List<Double> peak = loads.map(known -> known.peaks(dosed, ladder)).orElse(List.of());
            exercises.add(new FollowedExercise(dosed.range().candidate().id(), ladder, false, peak));
            if (!peak.isEmpty()) {
                double own = loads.get().logSd(dosed);
                sd = OptionalDouble.of(Math.max(own, sd.orElse(0)));
            }
        }
        visit.companions().forEach(companion -> exercises.add(companion(companion.exercise())));
        Optional<Prior> prior =
                sd.isPresent() ? Optional.of(Prior.of(0, sd.getAsDouble(), irritability(visit))) : Optional.empty();
        return new FollowedPlan(exercises, prior, seed(visit.file().id()));
    }

    /**
     * An exercise of a plan with a dose that was set anew, its ladder and its loads; empty if the plan does not give it as
     * a glide.
     */
    public static Optional<FollowedExercise> set(VisitPlan visit, String exerciseId, HomeSetting setting) {
        return visit.given().stream()
                .filter(dosed -> dosed.range().candidate().id().equals(exerciseId))
                .findFirst()
                .map(dosed -> {
                    var dose = HomeDose.of(setting.dose(dosed.dose().secondsPerDirection()));
                    Ladder ladder = Ladder.through(dose, setting.ceiling());
                    List<Double> peak = visit.result()
                            .flatMap(RungLoads::of)
                            .map(known -> known.peaks(dosed, ladder))
                            .orElse(List.of());
                    return new FollowedExercise(exerciseId, ladder, false, peak);
                });
    }

    /** One rung: its own dose. */
    private static FollowedExercise companion(Exercise exercise) {
        var own = exercise.dose();
        double seconds = exercise.movement().motion(Map.of()).seconds() / 2;
        var dose = new HomeDose(own.repetitions(), own.sets(), own.sessionsPerDay(), 1, seconds);
        var ceiling = new Ceiling(own.repetitions(), own.sessionsPerDay(), 1);
        return new FollowedExercise(exercise.id(), new Ladder(List.of(dose), 0, 0, ceiling), true, List.of());
    }

    private static Irritability irritability(VisitPlan visit) {
        return visit.result().orElseThrow().plan().irritability().level();
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
