package slipway.care.record.trail;

/**
 * A place where a trail does not hold.
 *
 * @param seq of the entry where it shows
 */
public record TrailBreak(Chain chain, long seq, Kind kind, String words) {
    /** What does not hold. */
    public enum Kind {
        /** The entry is not the one that its digest was taken over. */
        ENTRY_CHANGED,
        /** Entries are missing before this one. */
        ENTRY_REMOVED,
        /** The entry does not follow the one before it. */
        ORDER,
        /** The payload is not the one that was written. */
        PAYLOAD_CHANGED,
        /** A payload is gone that nobody erased. */
        PAYLOAD_REMOVED,
        /** The newest entries are gone, or more are there than were written. */
        END
    }

    /** One line for people. */
    @Override
    public String toString() {
        return "%s, entry %d: %s".formatted(chain, seq, words);
    }
}
