/**
 * The course of an episode: doses as a staircase below the tolerance, sessions as marks, measures with their error, visits
 * and decisions as numbered flags, goals with their chance; and the forest of changes in units of what is more than error.
 * Shapes differ as well as colours. Draws what it is given and judges nothing.
 */
@NullMarked
package slipway.pictures.course;

import org.jspecify.annotations.NullMarked;
