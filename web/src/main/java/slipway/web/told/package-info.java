/**
 * What a person told by phone before the first visit, as the therapist meets it: the list of the questions, what each
 * answer would say in the record, what is taken of it, and the signs of danger that wait for an answer.
 */
@NullMarked
package slipway.web.told;

import org.jspecify.annotations.NullMarked;
