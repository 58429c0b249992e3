/**
 * Reads the tables that ship with the study: every number of the simulation lives there with its source or mark.
 */
@NullMarked
package slipway.study.data;

import org.jspecify.annotations.NullMarked;
