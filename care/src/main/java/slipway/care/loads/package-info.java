/** What the glides of the catalogue do at a place of a standard body: glide, rise of load, and their ratio. */
@NullMarked
package slipway.care.loads;

import org.jspecify.annotations.NullMarked;
