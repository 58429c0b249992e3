/**
 * How easy a text is to read, by published formulas for English and Spanish, with their syllable counters. Knows nothing
 * of exercises but their languages.
 */
@NullMarked
package slipway.exercises.readability;

import org.jspecify.annotations.NullMarked;
