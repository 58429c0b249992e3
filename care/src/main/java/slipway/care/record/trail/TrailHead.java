package slipway.care.record.trail;

/**
 * The newest entry of a chain as it is kept beside the entries.
 *
 * @param seq number of entries
 * @param digest of the newest; {@link TrailForm#START} if there is none
 */
public record TrailHead(Chain chain, long seq, String digest) {}
