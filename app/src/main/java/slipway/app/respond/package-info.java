/** The command that answers what a person reported between visits. */
@NullMarked
package slipway.app.respond;

import org.jspecify.annotations.NullMarked;
