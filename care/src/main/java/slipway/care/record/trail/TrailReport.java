package slipway.care.record.trail;

import java.util.List;

/** What a verification found. */
public record TrailReport(long chains, long entries, List<TrailBreak> breaks) {
    public TrailReport {
        breaks = List.copyOf(breaks);
    }

    /** Whether every chain holds. */
    public boolean isIntact() {
        return breaks.isEmpty();
    }
}
