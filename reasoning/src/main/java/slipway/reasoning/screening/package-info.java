/**
 * Is it safe to treat here? Questions, signs and clusters from {@code screening/rules.yaml} against answers and findings;
 * the highest level wins and stands above every model. Nothing here weighs probabilities, and no setting switches a fixed
 * rule off.
 */
@NullMarked
package slipway.reasoning.screening;

import org.jspecify.annotations.NullMarked;
