/** Commands on the records of a clinic: cases in and out, and the check of the trail. */
@NullMarked
package slipway.app.records;

import org.jspecify.annotations.NullMarked;
