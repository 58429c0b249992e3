/** Pictures of motions: load over time. */
@NullMarked
package slipway.pictures.motion;

import org.jspecify.annotations.NullMarked;
