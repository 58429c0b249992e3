/** Points, directions and cameras: how a body in a room becomes a flat picture. Knows nothing of bodies or SVG. */
@NullMarked
package slipway.pictures.space;

import org.jspecify.annotations.NullMarked;
