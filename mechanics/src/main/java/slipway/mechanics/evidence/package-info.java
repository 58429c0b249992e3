/**
 * The published numbers that ship with the program, read from its own class path and checked once on load. Evidence is
 * frozen: a number changes in the data file, never here.
 */
@NullMarked
package slipway.mechanics.evidence;

import org.jspecify.annotations.NullMarked;
