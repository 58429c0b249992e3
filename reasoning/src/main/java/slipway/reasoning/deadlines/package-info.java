/**
 * By when papers are due: sending or certification of the plan, recertification, progress reports. The rules are dated
 * settings of a payer, in {@code paper-rules.csv}; counting is what lives here. Asks no clock.
 */
@NullMarked
package slipway.reasoning.deadlines;

import org.jspecify.annotations.NullMarked;
