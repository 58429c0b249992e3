package slipway.reasoning.dose;

/** An exercise with its range and its first dose. */
public record DosedExercise(DesignedRange range, Dose dose) {}
