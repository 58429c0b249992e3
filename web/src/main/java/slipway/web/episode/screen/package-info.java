/** Screening for danger: the questions, the result, clearances, the referral letter. */
@NullMarked
package slipway.web.episode.screen;

import org.jspecify.annotations.NullMarked;
