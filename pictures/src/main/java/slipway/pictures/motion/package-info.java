/** Pictures of motions: load over time, and figures that can be moved. */
@NullMarked
package slipway.pictures.motion;

import org.jspecify.annotations.NullMarked;
