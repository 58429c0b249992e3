/**
 * What every result of the reasoning carries with it: the rule that spoke, its numbers, and where they come from. Also
 * reads the coefficient tables, so that no clinical number stands bare in code. Knows nothing of nerves or doses.
 */
@NullMarked
package slipway.reasoning.basis;

import org.jspecify.annotations.NullMarked;
