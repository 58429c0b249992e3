package slipway.reasoning.dose;

import slipway.reasoning.basis.Reason;

/**
 * An exercise that is not given, and why.
 *
 * @param id of the exercise
 */
public record Refusal(String id, Reason reason) {}
