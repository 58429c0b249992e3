/**
 * The exercises that ship with the program, read from its class path once and held against each other: every neighbour
 * exists, every id is its file name.
 */
@NullMarked
package slipway.exercises.catalogue;

import org.jspecify.annotations.NullMarked;
