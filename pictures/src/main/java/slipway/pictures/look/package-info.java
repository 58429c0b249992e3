/** Colours of pictures: paper, grey print and dark screens; skin, hair and clothes of the figure. */
@NullMarked
package slipway.pictures.look;

import org.jspecify.annotations.NullMarked;
