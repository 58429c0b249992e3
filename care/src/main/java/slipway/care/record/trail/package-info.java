/**
 * The trail: who did what and when, in one chain of digests per person and one per clinic. The payload, what was there
 * before and after, stands apart, so that it can be erased and the chain still verifies.
 */
@NullMarked
package slipway.care.record.trail;

import org.jspecify.annotations.NullMarked;
