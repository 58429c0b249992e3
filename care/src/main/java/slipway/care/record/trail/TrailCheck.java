package slipway.care.record.trail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Checks one chain, entry by entry in the order of their numbers. What it cannot see is a chain that was rebuilt as a
 * whole, head and all, by somebody who can write to the database; for that, keep {@link TrailReport#headsDigest()}
 * elsewhere.
 */
public final class TrailCheck {
    private final Chain chain;
    private final List<TrailBreak> breaks = new ArrayList<>();
    private final List<TrailBreak> missingPayloads = new ArrayList<>();
    private long lastSeq;
    private String lastDigest = TrailForm.START;

    public TrailCheck(Chain chain) {
        this.chain = chain;
    }

    /**
     * Checks the next entry.
     *
     * @param payload what stands in the table of payloads; empty if nothing
     */
    public void next(TrailEntry entry, Optional<TrailPayload> payload) {
        if (entry.seq() != lastSeq + 1) {
            add(entry, TrailBreak.Kind.ENTRY_REMOVED, missing(entry));
        } else if (!entry.previousDigest().equals(lastDigest)) {
            add(entry, TrailBreak.Kind.ORDER, "it does not follow the entry before it");
        }
        if (!TrailForm.digest(entry).equals(entry.digest())) {
            add(entry, TrailBreak.Kind.ENTRY_CHANGED, "it is not the entry that was written");
        }
        checkPayload(entry, payload);
        if (entry.action() == Action.ERASE) {
            missingPayloads.clear();
        }
        lastSeq = entry.seq();
        lastDigest = entry.digest();
    }

    private String missing(TrailEntry entry) {
        return lastSeq + 2 == entry.seq()
                ? "entry %d before it is missing".formatted(lastSeq + 1)
                : "entries %d to %d before it are missing".formatted(lastSeq + 1, entry.seq() - 1);
    }

    private void checkPayload(TrailEntry entry, Optional<TrailPayload> payload) {
        String form = payload.map(TrailPayload::form).orElse("");
        if (TrailForm.sha256(form).equals(entry.payloadDigest())) {
            return;
        }
        if (payload.isPresent()) {
            add(entry, TrailBreak.Kind.PAYLOAD_CHANGED, "its before and after are not what was written");
        } else {
            missingPayloads.add(new TrailBreak(
                    chain,
                    entry.seq(),
                    TrailBreak.Kind.PAYLOAD_REMOVED,
                    "its before and after are gone without an erasure"));
        }
    }

    /** What does not hold, once every entry was given. */
    public List<TrailBreak> end(Optional<TrailHead> head) {
        var all = new ArrayList<>(breaks);
        all.addAll(missingPayloads);
        if (head.isEmpty()) {
            all.add(new TrailBreak(chain, lastSeq, TrailBreak.Kind.END, "the head of the chain is gone"));
        } else if (head.get().seq() != lastSeq) {
            all.add(new TrailBreak(
                    chain,
                    lastSeq,
                    TrailBreak.Kind.END,
                    "the chain must end at entry %d and ends here"
                            .formatted(head.get().seq())));
        } else if (!head.get().digest().equals(lastDigest)) {
            all.add(new TrailBreak(chain, lastSeq, TrailBreak.Kind.END, "it is not the entry that the head names"));
        }
        return all;
    }

    private void add(TrailEntry entry, TrailBreak.Kind kind, String words) {
        breaks.add(new TrailBreak(chain, entry.seq(), kind, words));
    }
}
