/**
 * The text format of an exercise: from a YAML file to an {@link slipway.exercises.exercise.Exercise}, or to all the
 * mistakes of the file at once. Nothing outside reads exercise files.
 */
@NullMarked
package slipway.exercises.format;

import org.jspecify.annotations.NullMarked;
