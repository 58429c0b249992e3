/**
 * The doses that an exercise may have between two visits, as one chain of rungs from least to most, and the ceiling that
 * the therapist sets on it. Knows no reports and no person.
 */
@NullMarked
package slipway.reasoning.response.ladder;

import org.jspecify.annotations.NullMarked;
