/** The people of the clinic: finding one, a new one, their details, their episodes. */
@NullMarked
package slipway.web.people;

import org.jspecify.annotations.NullMarked;
