/** People: who they are and how to reach them. Names stay here; everything else knows people by id. */
@NullMarked
package slipway.care.record.person;

import org.jspecify.annotations.NullMarked;
