package slipway.care.record.chart;

import java.time.Instant;
import java.util.Optional;

/**
 * A visit.
 *
 * @param number 1, 2, ... within the episode
 * @param staffId who saw the person
 */
public record VisitRecord(
        String id,
        String episodeId,
        int number,
        String staffId,
        Instant startedAt,
        Optional<Instant> endedAt,
        long version) {}
