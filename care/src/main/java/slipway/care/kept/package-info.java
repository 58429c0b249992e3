/** Answers that are costly to work out, kept for a while for everybody who asks again. */
@NullMarked
package slipway.care.kept;

import org.jspecify.annotations.NullMarked;
