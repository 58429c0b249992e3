/**
 * The worlds: from what the hidden numbers of simulated people are drawn, and what differs in worlds where an assumption
 * of the program does not hold. Knows nothing of dosing.
 */
@NullMarked
package slipway.study.world;

import org.jspecify.annotations.NullMarked;
