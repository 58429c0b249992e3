/** Postures over time. Knows nothing of nerves, exercises or pictures. */
@NullMarked
package slipway.mechanics.motion;

import org.jspecify.annotations.NullMarked;
