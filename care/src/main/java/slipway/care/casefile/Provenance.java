package slipway.care.casefile;

import java.util.List;
import java.util.Optional;

/**
 * Where a case comes from.
 *
 * @param invented the whole person is invented
 * @param source where the findings come from; present unless invented
 * @param inventedParts paths of the file that the source does not state, as they stand there
 */
public record Provenance(boolean invented, Optional<String> source, List<String> inventedParts) {
    public Provenance {
        inventedParts = List.copyOf(inventedParts);
    }
}
