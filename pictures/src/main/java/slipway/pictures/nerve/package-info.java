/** The straightened nerve: strain and glide along a pathway that is drawn as one long strip. */
@NullMarked
package slipway.pictures.nerve;

import org.jspecify.annotations.NullMarked;
