/**
 * One simulated person: hidden state, how it answers to work and days, what the person tells. Its equations are its own;
 * nothing of the program's estimate may be used here, or the estimate would be tried on its own assumptions.
 */
@NullMarked
package slipway.study.person;

import org.jspecify.annotations.NullMarked;
