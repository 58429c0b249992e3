/**
 * How easily symptoms start and how slowly they settle: low, moderate or high, by rule and by the therapist's judgement,
 * with the reasons. What follows from it for a dose is decided elsewhere.
 */
@NullMarked
package slipway.reasoning.irritability;

import org.jspecify.annotations.NullMarked;
