/**
 * What the rest of the program asks of the nerve model: tracts, named sites, and the answer of one person's nerve to a
 * posture in every draw. How that answer is computed lives elsewhere.
 */
@NullMarked
package slipway.mechanics.nerve;

import org.jspecify.annotations.NullMarked;
