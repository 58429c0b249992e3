package slipway.reasoning.plan;

import java.util.List;
import java.util.OptionalInt;
import slipway.reasoning.dose.DoseFindings;
import slipway.reasoning.dose.ExerciseCandidate;
import slipway.reasoning.irritability.IrritabilityFindings;
import slipway.reasoning.screening.ScreeningResult;
import slipway.reasoning.tolerance.NeuralFindings;

/**
 * Everything that a plan follows from, besides the nerve model.
 *
 * @param candidates the more wanted before the less wanted
 * @param most how many are given at most, one for each leading joint; empty to give each that may be given
 * @param dose the limits of the screening are added to these
 */
public record PlanRequest(
        ScreeningResult screening,
        NeuralFindings neural,
        IrritabilityFindings irritability,
        DoseFindings dose,
        List<ExerciseCandidate> candidates,
        OptionalInt most,
        ModelStamp model) {
    public PlanRequest {
        candidates = List.copyOf(candidates);
    }

    /** A request for each exercise that may be given. */
    public PlanRequest(
            ScreeningResult screening,
            NeuralFindings neural,
            IrritabilityFindings irritability,
            DoseFindings dose,
            List<ExerciseCandidate> candidates,
            ModelStamp model) {
        this(screening, neural, irritability, dose, candidates, OptionalInt.empty(), model);
    }
}
