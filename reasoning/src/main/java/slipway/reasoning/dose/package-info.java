/**
 * How far, how often: the range of each exercise by the chance of staying below the limit, the guards that no model
 * overrides, the first dose, and the order. The catalogue of exercises lives elsewhere; here an exercise is a base
 * posture and moving joints.
 */
@NullMarked
package slipway.reasoning.dose;

import org.jspecify.annotations.NullMarked;
