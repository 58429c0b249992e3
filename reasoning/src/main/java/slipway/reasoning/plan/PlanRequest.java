package slipway.reasoning.plan;

import java.util.List;
import slipway.reasoning.dose.DoseFindings;
import slipway.reasoning.dose.ExerciseCandidate;
import slipway.reasoning.irritability.IrritabilityFindings;
import slipway.reasoning.tolerance.NeuralFindings;

/** Everything that a plan follows from, besides the nerve model. */
public record PlanRequest(
        ScreeningSummary screening,
        NeuralFindings neural,
        IrritabilityFindings irritability,
        DoseFindings dose,
        List<ExerciseCandidate> candidates,
        ModelStamp model) {
    public PlanRequest {
        candidates = List.copyOf(candidates);
    }
}
