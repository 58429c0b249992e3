/** Pictures of how well the nerve model agrees with published measurements. */
@NullMarked
package slipway.pictures.validity;

import org.jspecify.annotations.NullMarked;
