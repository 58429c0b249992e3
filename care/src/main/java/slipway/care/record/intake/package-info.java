/**
 * What a person told by phone before the first visit: kept as it was told, apart from what the therapist records. Nothing
 * of it is a finding until the therapist takes it.
 */
@NullMarked
package slipway.care.record.intake;

import org.jspecify.annotations.NullMarked;
