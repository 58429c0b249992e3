/**
 * The questions before the first visit: the code that the staff makes, and the pages on the person's phone. What is told
 * here goes beside the record, never into it.
 */
@NullMarked
package slipway.web.intake;

import org.jspecify.annotations.NullMarked;
