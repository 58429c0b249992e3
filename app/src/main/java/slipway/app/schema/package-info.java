/** The schemas of the files that the program reads and writes. */
@NullMarked
package slipway.app.schema;

import org.jspecify.annotations.NullMarked;
