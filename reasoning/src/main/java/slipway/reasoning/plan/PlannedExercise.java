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
                ranges(range.candidate().moves(), range.end()),
                dosed.dose(),
                site.name(),
                range.effect(),
                range.guards(),
                range.reasons());
    }

    private static List<JointRange> ranges(List<Movement> moves, Posture end) {
        var ranges = new ArrayList<JointRange>();
        for (Movement move : moves) {
            String prefix = move.limb() == Limb.OTHER ? "other-" : "";
            ranges.add(new JointRange(
                    prefix + move.joint().key(), move.fromDeg(), end.angleDeg(move.joint(), move.limb())));
        }
        return ranges;
    }
}
