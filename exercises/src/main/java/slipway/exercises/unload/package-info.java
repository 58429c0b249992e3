/**
 * What a patient reads besides the exercises: what to change in the day so that less presses on the nerve, and the rules
 * that hold for every exercise. Values and their files; the plan chooses.
 */
@NullMarked
package slipway.exercises.unload;

import org.jspecify.annotations.NullMarked;
