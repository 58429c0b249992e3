/**
 * What an examination found, and the words for it: one finding is one result of one item on one side. The vocabulary
 * comes from {@code findings/terms.csv}; which targets of the anatomical graph a broad word ("ankle dorsiflexors", "S1
 * dermatome") stands for is written there, once. No inference here: {@link slipway.reasoning.locate} does that.
 */
@NullMarked
package slipway.reasoning.findings;

import org.jspecify.annotations.NullMarked;
