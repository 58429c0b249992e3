/** The exercise text format, the catalogue, readability. */
@NullMarked
package slipway.exercises;

import org.jspecify.annotations.NullMarked;
