package slipway.reasoning.dose;

import java.util.List;
import java.util.Optional;
import slipway.mechanics.nerve.NerveModel;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.irritability.IrritabilityReport;
import slipway.reasoning.tolerance.NeuralFindings;
import slipway.reasoning.tolerance.ToleranceEstimator;

/** Short ways to a dose plan in tests. */
final class Cases {
    private Cases() {}

    static DosePlan plan(
            NerveModel nerve,
            NeuralFindings neural,
            Irritability irritability,
            DoseFindings findings,
            List<ExerciseCandidate> candidates) {
        return DosePlanner.plan(new DoseCase(
                neural,
                ToleranceEstimator.estimate(nerve, neural),
                new IrritabilityReport(irritability, List.of()),
                findings,
                candidates,
                Optional.empty()));
    }

    /** How far the leading joint goes, in degrees; 0 if the exercise is not given. */
    static double travelDeg(DosePlan plan, String id) {
        return plan.exercises().stream()
                .filter(dosed -> dosed.range().candidate().id().equals(id))
                .mapToDouble(dosed -> {
                    var lead = dosed.range().candidate().lead();
                    return Math.abs(dosed.range().end().angleDeg(lead.joint(), lead.limb()) - lead.fromDeg());
                })
                .sum();
    }

    static List<String> ids(DosePlan plan) {
        return plan.exercises().stream()
                .map(dosed -> dosed.range().candidate().id())
                .toList();
    }

    static String refusal(DosePlan plan, String id) {
        return plan.refused().stream()
                .filter(refusal -> refusal.id().equals(id))
                .map(refusal -> refusal.reason().rule())
                .findFirst()
                .orElse("not refused");
    }
}
