package slipway.care.visit;

import slipway.exercises.exercise.Exercise;

/**
 * An exercise that goes with the glides and is dosed by its own rules, or one that the therapist picked and the nerve
 * model cannot dose.
 *
 * @param exercise the exercise with its own dose
 * @param because why it is there, in words
 */
public record Companion(Exercise exercise, String because) {}
