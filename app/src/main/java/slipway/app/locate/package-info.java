/** The commands that screen and locate, for one person or for a list of published cases. */
@NullMarked
package slipway.app.locate;

import org.jspecify.annotations.NullMarked;
