/** Files of diagnosis codes that a clinic loads: read whole or refused with every mistake, and written again. */
@NullMarked
package slipway.care.codes;

import org.jspecify.annotations.NullMarked;
