/** When a clinic is open, from its setting: what the pages of the person at home say, and by what clock alerts rise. */
@NullMarked
package slipway.web.hours;

import org.jspecify.annotations.NullMarked;
