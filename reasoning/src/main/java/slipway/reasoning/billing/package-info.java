/**
 * What a day's treatment minutes come to in units: the 8-minute rule and the midpoint rule, with ties left to the
 * therapist. Dates by which papers are due and diagnosis codes have packages of their own. Knows no code of any service
 * and no price.
 */
@NullMarked
package slipway.reasoning.billing;

import org.jspecify.annotations.NullMarked;
