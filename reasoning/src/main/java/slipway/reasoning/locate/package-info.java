/**
 * Where along the pathway is the trouble, how sure is that, and which test would tell most next. An anatomical graph
 * ({@link slipway.reasoning.locate.Graph}) says what share of a target's fibres passes a site; graded noisy-or curves turn
 * lost fibres into findings; the posterior over site, severity, side and pairs of sites is summed exactly. All numbers are
 * in data files. Screening stands above it: nothing here clears anybody.
 */
@NullMarked
package slipway.reasoning.locate;

import org.jspecify.annotations.NullMarked;
