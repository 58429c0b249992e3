package slipway.store.db;

import java.security.SecureRandom;
import java.time.Instant;
import java.util.UUID;

/** New ids: UUIDs of version 7 (RFC 9562), which sort by the time they were made, so that indexes grow at their end. */
public final class Ids {
    private final SecureRandom random = new SecureRandom();

    /** A new id for something made at this time. */
    public String next(Instant at) {
        long high = (at.toEpochMilli() << 16) | 0x7000L | (random.nextLong() & 0xFFFL);
        long low = (random.nextLong() & 0x3FFF_FFFF_FFFF_FFFFL) | 0x8000_0000_0000_0000L;
        return new UUID(high, low).toString();
    }
}
