/** Everything drawn, as SVG: the figure from a posture, the load ruler, the straightened nerve. */
@NullMarked
package slipway.pictures;

import org.jspecify.annotations.NullMarked;
