/** Commands about the nerve model itself: fit it, ask it for published measurements, ask it for a posture. */
@NullMarked
package slipway.app.nerve;

import org.jspecify.annotations.NullMarked;
