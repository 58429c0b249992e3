/**
 * Runs every way of dosing on the same simulated people and sums up. The sums are whole numbers, so that they do not
 * depend on the order of people or on the number of threads.
 */
@NullMarked
package slipway.study.run;

import org.jspecify.annotations.NullMarked;
