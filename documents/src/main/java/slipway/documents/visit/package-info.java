/** From the result of a visit to what is printed: the sheet for home, the referral letter, and the plan as text and JSON. */
@NullMarked
package slipway.documents.visit;

import org.jspecify.annotations.NullMarked;
