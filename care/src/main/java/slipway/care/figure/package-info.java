/** Pictures of exercises: from the text format of an exercise to a scene that the figure engine draws. */
@NullMarked
package slipway.care.figure;

import org.jspecify.annotations.NullMarked;
