/** What leaves the program for other systems and what comes in from them. */
@NullMarked
package slipway.exchange;

import org.jspecify.annotations.NullMarked;
