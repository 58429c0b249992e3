/**
 * The plan as it leaves the reasoning: the records of plan.json, with everything they rest on. Nothing is computed here
 * but their putting together.
 */
@NullMarked
package slipway.reasoning.plan;

import org.jspecify.annotations.NullMarked;
