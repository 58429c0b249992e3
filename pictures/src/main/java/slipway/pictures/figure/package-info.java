/** The figure: a person in a posture with the things around, as a scene that is described, solved and drawn as SVG. */
@NullMarked
package slipway.pictures.figure;

import org.jspecify.annotations.NullMarked;
