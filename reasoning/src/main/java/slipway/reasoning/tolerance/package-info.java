/**
 * How much nerve load starts this person's symptoms: from neural tests to weighted draws of the tolerance, with what
 * speaks for and against nerve. Loads are in percent of strain above the person's rest posture. Doses and exercises
 * are no matter of this package.
 */
@NullMarked
package slipway.reasoning.tolerance;

import org.jspecify.annotations.NullMarked;
