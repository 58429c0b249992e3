/** The exercises: the gallery, the page of one, and the writer that checks a text while it is written. */
@NullMarked
package slipway.web.gallery;

import org.jspecify.annotations.NullMarked;
