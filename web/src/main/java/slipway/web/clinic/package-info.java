/** The clinic: its staff and teams, its settings, its trail. */
@NullMarked
package slipway.web.clinic;

import org.jspecify.annotations.NullMarked;
