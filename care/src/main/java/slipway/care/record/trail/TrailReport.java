package slipway.care.record.trail;

import java.util.List;

/**
 * What a verification found.
 *
 * @param headsDigest SHA-256 over the newest entry of every chain, in hexadecimal; it stays the same until something is
 *     written, so that a note of it, kept elsewhere, shows whether a database was rebuilt while nobody worked
 */
public record TrailReport(long chains, long entries, String headsDigest, List<TrailBreak> breaks) {
    public TrailReport {
        breaks = List.copyOf(breaks);
    }

    /** Whether every chain holds. */
    public boolean isIntact() {
        return breaks.isEmpty();
    }
}
