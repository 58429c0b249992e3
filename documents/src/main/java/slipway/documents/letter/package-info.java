/**
 * The referral letter: one page, as text and as PDF with the same words in the same order. What is not known stays a
 * visible blank. Nothing here decides how urgent something is; the screening did, and a therapist signs.
 */
@NullMarked
package slipway.documents.letter;

import org.jspecify.annotations.NullMarked;
