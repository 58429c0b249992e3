/** Between the case file and the record: a file falls apart into what is kept, what is kept is put together again. */
@NullMarked
package slipway.care.record.assembly;

import org.jspecify.annotations.NullMarked;
