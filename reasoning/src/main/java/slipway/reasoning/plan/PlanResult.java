package slipway.reasoning.plan;

import slipway.reasoning.dose.DosePlan;

/**
 * A plan with the postures behind it, from which figures and guides are made.
 *
 * @param dose the same exercises as {@code plan}, in the same order, with start and end postures and motions
 */
public record PlanResult(CarePlan plan, DosePlan dose) {}
