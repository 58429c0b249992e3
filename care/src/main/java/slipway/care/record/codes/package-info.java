/** Port of the diagnosis codes that a clinic has loaded. Every load is kept, with who and when. */
@NullMarked
package slipway.care.record.codes;

import org.jspecify.annotations.NullMarked;
