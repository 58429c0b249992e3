/** What comes out on paper: home sheet and letters as tagged PDF. */
@NullMarked
package slipway.documents;

import org.jspecify.annotations.NullMarked;
