package slipway.reasoning.plan;

import java.util.List;
import slipway.reasoning.dose.DoseFindings;
import slipway.reasoning.dose.ExerciseCandidate;
import slipway.reasoning.irritability.IrritabilityFindings;
import slipway.reasoning.screening.ScreeningResult;
import slipway.reasoning.tolerance.NeuralFindings;

/**
 * Everything that a plan follows from, besides the nerve model.
 *
 * @param dose the limits of the screening are added to these
 */
public record PlanRequest(
        ScreeningResult screening,
        NeuralFindings neural,
        IrritabilityFindings irritability,
        DoseFindings dose,
        List<ExerciseCandidate> candidates,
        ModelStamp model) {
    public PlanRequest {
        candidates = List.copyOf(candidates);
    }
}
