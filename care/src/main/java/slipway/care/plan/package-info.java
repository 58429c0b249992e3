/** The plan: what comes out for a case, and its JSON form. */
@NullMarked
package slipway.care.plan;

import org.jspecify.annotations.NullMarked;
