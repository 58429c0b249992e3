/** {@code slipway plan}: from a case file to a plan and its papers. */
@NullMarked
package slipway.app.plan;

import org.jspecify.annotations.NullMarked;
