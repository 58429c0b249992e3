/**
 * The languages of the papers and the message files that hold every text printed on them. No wording lives in code: a
 * class names a key, and the file of its package has the words, once for each language.
 */
@NullMarked
package slipway.documents.words;

import org.jspecify.annotations.NullMarked;
