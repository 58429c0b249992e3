/**
 * The body as a chain of joints with flesh around it, resting on what carries it: from joint angles to points in the
 * room. Knows nothing of pictures, colours or SVG.
 */
@NullMarked
package slipway.pictures.skeleton;

import org.jspecify.annotations.NullMarked;
