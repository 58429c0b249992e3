/** The one program: the command line. */
@NullMarked
package slipway.app;

import org.jspecify.annotations.NullMarked;
