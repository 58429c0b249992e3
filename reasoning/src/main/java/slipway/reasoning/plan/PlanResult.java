package slipway.reasoning.plan;

import slipway.reasoning.dose.DosePlan;
import slipway.reasoning.tolerance.ToleranceEstimate;

/**
 * A plan with the postures behind it, from which figures and guides are made.
 *
 * @param dose the same exercises as {@code plan}, in the same order, with start and end postures and motions
 * @param tolerance the estimate behind the report, with its draws, for pictures
 */
public record PlanResult(CarePlan plan, DosePlan dose, ToleranceEstimate tolerance) {}
