package slipway.reasoning.tolerance;

import slipway.mechanics.body.Posture;

/**
 * A posture, seen from the affected side, in which the symptoms stay at their resting level for as long as the person
 * wants: the tolerance is at least its load.
 */
public record ComfortablePosition(String name, Posture posture) {}
