/** The first page of the day: who needs something and why, alerts apart from everything else. */
@NullMarked
package slipway.web.today;

import org.jspecify.annotations.NullMarked;
