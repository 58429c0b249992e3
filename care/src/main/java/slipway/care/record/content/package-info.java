/**
 * The clinical content of an episode in sections, each edited and locked as one and each in the vocabulary of the case
 * file. All sections together are a case file; a case file falls apart into sections without loss.
 */
@NullMarked
package slipway.care.record.content;

import org.jspecify.annotations.NullMarked;
