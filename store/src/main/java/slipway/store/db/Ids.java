package slipway.store.db;

import java.security.SecureRandom;
import java.time.Instant;
import java.util.UUID;

/**
 * New ids: UUIDs of version 7 (RFC 9562), which sort by the time they were made, so that indexes grow at their end. Ids
 * of one millisecond rise in the order in which they were asked for (section 6.2, method 2), so that a list by time and
 * id keeps the order in which things were recorded together.
 */
public final class Ids {
    private static final long LOW_BITS = 0x3FFF_FFFF_FFFF_FFFFL;
    private static final long VARIANT = 0x8000_0000_0000_0000L;
    /** Of the twelve random bits beside the time the first starts as zero, so that there is room to rise. */
    private static final long HIGH_START = 0x7FFL;

    private final SecureRandom random = new SecureRandom();
    private long lastMilli = Long.MIN_VALUE;
    private long high;
    private long low;

    /** A new id for something made at this time; above the one before it when that has the same millisecond. */
    public synchronized String next(Instant at) {
        long milli = at.toEpochMilli();
        if (milli == lastMilli) {
            // A step of up to 2^32 keeps the next id from being guessed out of the last.
            low += 1 + (random.nextInt() & 0xFFFF_FFFFL);
            high += low >>> 62;
        } else {
            lastMilli = milli;
            high = random.nextLong() & HIGH_START;
            low = random.nextLong();
        }
        low &= LOW_BITS;
        return new UUID((milli << 16) | 0x7000L | high, low | VARIANT).toString();
    }
}
