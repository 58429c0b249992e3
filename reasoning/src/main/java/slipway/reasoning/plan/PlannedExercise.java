package slipway.reasoning.plan;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.ArrayList;
import java.util.List;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.dose.DesignedRange;
import slipway.reasoning.dose.Dose;
import slipway.reasoning.dose.DosedExercise;
import slipway.reasoning.dose.Effect;
import slipway.reasoning.dose.ExerciseCandidate;
import slipway.reasoning.tolerance.Movement;

/**
 * One exercise of a plan. In JSON dose and effect are written flat.
 *
 * @param id of the exercise in its catalogue
 * @param site where glide is read
 */
public record PlannedExercise(
        String id,
        String position,
        List<JointRange> ranges,
        @JsonUnwrapped Dose dose,
        String site,
        @JsonUnwrapped Effect effect,
        List<Reason> guards,
        List<Reason> reasons) {
    public PlannedExercise {
        ranges = List.copyOf(ranges);
        guards = List.copyOf(guards);
        reasons = List.copyOf(reasons);
    }

    static PlannedExercise of(DosedExercise dosed, Site site) {
        DesignedRange range = dosed.range();
        return new PlannedExercise(
                range.candidate().id(),
                range.candidate().position(),
                ranges(range.candidate(), range.end()),
                dosed.dose(),
                site.name(),
                range.effect(),
                range.guards(),
                range.reasons());
    }

    private static List<JointRange> ranges(ExerciseCandidate candidate, Posture end) {
        var ranges = new ArrayList<JointRange>();
        candidate.moves().forEach(move -> ranges.add(range(move, move.fromDeg(), end)));
        candidate.ease().ifPresent(held -> {
            double heldDeg = candidate.base().angleDeg(held.joint(), held.limb());
            ranges.add(range(held, heldDeg, end));
        });
        return ranges;
    }

    private static JointRange range(Movement move, double fromDeg, Posture end) {
        String prefix = move.limb() == Limb.OTHER ? "other-" : "";
        return new JointRange(prefix + move.joint().key(), fromDeg, end.angleDeg(move.joint(), move.limb()));
    }
}
