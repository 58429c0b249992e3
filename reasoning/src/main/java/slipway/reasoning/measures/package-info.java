/**
 * Outcome measures: how each is scored, what its error is, and whether a change is within error, real or important. The
 * measures are data with their sources; the wording of items is there only where nobody owns it. What a row of scores
 * over time means for the care is in {@code course}.
 */
@NullMarked
package slipway.reasoning.measures;

import org.jspecify.annotations.NullMarked;
