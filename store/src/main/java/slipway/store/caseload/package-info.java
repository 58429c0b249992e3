/** Lists over many people, each one query. */
@NullMarked
package slipway.store.caseload;

import org.jspecify.annotations.NullMarked;
