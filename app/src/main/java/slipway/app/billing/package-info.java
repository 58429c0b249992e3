/** {@code slipway units}: what treatment minutes come to. */
@NullMarked
package slipway.app.billing;

import org.jspecify.annotations.NullMarked;
