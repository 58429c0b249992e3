/** Lists over many people, each one query, at a cost that does not grow with the number of closed episodes. */
@NullMarked
package slipway.care.record.caseload;

import org.jspecify.annotations.NullMarked;
