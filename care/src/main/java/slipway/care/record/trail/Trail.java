package slipway.care.record.trail;

import java.util.List;
import java.util.Optional;
import slipway.care.record.Act;

/** The trail. Nothing in it can be changed through this port. */
public interface Trail {
    /** Entries of a chain, newest first; {@code beforeSeq} of the last row of the page before, 0 for the first page. */
    List<TrailEntry> list(Chain chain, long beforeSeq, int limit);

    /** What was there before and after; empty if there was nothing or it was erased. */
    Optional<TrailPayload> payload(Chain chain, long seq);

    /**
     * Notes something that leaves no other mark, such as a print or an export.
     *
     * @param entity kind of the record
     */
    void note(Chain chain, Action action, String entity, String entityId, Act act);

    /** Verifies every chain. */
    TrailReport verify();
}
