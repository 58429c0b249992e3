package slipway.care.record.follow;

import java.time.Instant;
import java.util.Optional;

/**
 * A safety alert. It stays open until somebody takes it.
 *
 * @param kind the rule that raised it, for example {@code emergency} or {@code new-weakness}
 * @param words what happened, without the name of the person
 * @param ownerId account of whoever has to look
 * @param level how far it has been escalated: 0 the owner, 1 the lead, ...
 */
public record Alert(
        String id,
        String episodeId,
        String kind,
        String words,
        Optional<String> checkInId,
        String ownerId,
        Instant raisedAt,
        int level,
        Instant levelAt,
        Optional<Acknowledged> acknowledged) {
    /** Taken by somebody. */
    public record Acknowledged(String by, Instant at, String what) {}
}
