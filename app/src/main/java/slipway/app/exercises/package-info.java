/** The command that lists, shows and checks exercises. */
@NullMarked
package slipway.app.exercises;

import org.jspecify.annotations.NullMarked;
