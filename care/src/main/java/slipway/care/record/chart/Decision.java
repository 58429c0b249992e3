package slipway.care.record.chart;

import java.time.Instant;

/**
 * What a therapist decided on a proposal; never changed, a later decision stands beside it.
 *
 * @param about what was proposed, a path such as {@code plan/3/exercise/ankle-pumps} or {@code screening/nightPain}
 * @param proposed what the program proposed, in short; may be empty
 * @param chosen what was chosen instead; empty unless changed
 * @param reason why; may only be empty when accepted
 */
public record Decision(
        String id,
        String episodeId,
        String about,
        Verdict verdict,
        String proposed,
        String chosen,
        String reason,
        String by,
        Instant at) {
    public Decision {
        if (about.isBlank()) {
            throw new IllegalArgumentException("a decision must say what it is about");
        }
        if (reason.isBlank() && verdict != Verdict.ACCEPT) {
            throw new IllegalArgumentException("a change or refusal needs a reason");
        }
    }
}
