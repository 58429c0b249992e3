/**
 * What an exercise is: its movement on the posture type of mechanics, its words in two languages, its dose and its
 * neighbours. Values only: no files, no pictures, no person.
 */
@NullMarked
package slipway.exercises.exercise;

import org.jspecify.annotations.NullMarked;
