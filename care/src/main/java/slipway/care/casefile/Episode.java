package slipway.care.casefile;

import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Side;

/**
 * The frame of the care.
 *
 * @param side the side of the symptoms that it is about
 */
public record Episode(Side side, Language language, Clinic clinic, History history, Abilities abilities) {}
