/**
 * Nerve loads of a fixed set of bodies, places and exercises, computed once from the nerve model: what simulated people
 * truly bear and what the ways of dosing are shown of it.
 */
@NullMarked
package slipway.study.load;

import org.jspecify.annotations.NullMarked;
