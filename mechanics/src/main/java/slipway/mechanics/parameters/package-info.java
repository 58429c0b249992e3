/** The parameters of the nerve model, their priors, the fitted values and the seeded draws. */
@NullMarked
package slipway.mechanics.parameters;

import org.jspecify.annotations.NullMarked;
