package slipway.care.record.trail;

import java.time.Instant;

/**
 * One entry of a trail.
 *
 * @param seq 1, 2, ... within the chain
 * @param at to the microsecond
 * @param who see {@link slipway.care.record.Act#who()}
 * @param role name of the role
 * @param entity kind of the record, for example {@code section/tolerance}
 * @param entityId its id
 * @param version of the record after the act; 0 where there are no versions
 * @param payloadDigest SHA-256 of the payload; of the empty text where there is none
 * @param previousDigest digest of the entry before; {@link TrailForm#START} for the first
 * @param digest see {@link TrailForm#digest}
 */
public record TrailEntry(
        Chain chain,
        long seq,
        Instant at,
        String who,
        String role,
        Action action,
        String entity,
        String entityId,
        long version,
        String payloadDigest,
        String previousDigest,
        String digest) {}
