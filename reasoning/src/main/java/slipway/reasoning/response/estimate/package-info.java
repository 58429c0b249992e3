/**
 * What this nerve bears, followed from report to report by a particle filter: tolerance, settle time and daily gain. Gives
 * the chance of a flare for any dose. All chance is seeded: the same reports give the same answer. The arrays of
 * {@code Particles} are the fast core that studies use directly; everything else is for one person.
 */
@NullMarked
package slipway.reasoning.response.estimate;

import org.jspecify.annotations.NullMarked;
