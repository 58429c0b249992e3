/** The commands that start the pages. */
@NullMarked
package slipway.app.serve;

import org.jspecify.annotations.NullMarked;
