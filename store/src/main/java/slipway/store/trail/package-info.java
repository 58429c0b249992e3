/** Writing, listing and verifying the trail, and writing a record together with its entry. */
@NullMarked
package slipway.store.trail;

import org.jspecify.annotations.NullMarked;
