/** Draws a body and the things around it as a camera sees them. The scene and its rules are in {@code figure}. */
@NullMarked
package slipway.pictures.drawing;

import org.jspecify.annotations.NullMarked;
