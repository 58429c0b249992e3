package slipway.care.record.chart;

import java.time.Instant;
import java.util.Optional;
import slipway.mechanics.body.Side;

/**
 * One problem of one person from first visit to discharge.
 *
 * @param side the side of the symptoms
 * @param therapistId account of the therapist in charge
 * @param version 1, 2, ...
 * @param closedAt when it ended; there if and only if it is closed
 */
public record Episode(
        String id,
        String personId,
        String clinicId,
        Side side,
        String therapistId,
        EpisodeState state,
        Instant openedAt,
        Optional<Instant> closedAt,
        long version) {
    public Episode {
        if (closedAt.isPresent() != (state == EpisodeState.CLOSED)) {
            throw new IllegalArgumentException("an episode has a closing time if and only if it is closed");
        }
    }
}
