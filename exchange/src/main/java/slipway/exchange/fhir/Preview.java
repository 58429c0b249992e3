package slipway.exchange.fhir;

import java.util.List;
import java.util.Optional;
import slipway.care.facts.EpisodeFacts;

/**
 * What a bundle from elsewhere would change. Nothing has been changed yet.
 *
 * @param items one for each thing in the bundle, in its order
 * @param known what would be known of the person and the episode
 * @param result the episode as it would be; empty if the bundle was compared with nothing
 */
public record Preview(List<Item> items, Known known, Optional<EpisodeFacts> result) {
    public Preview {
        items = List.copyOf(items);
    }

    /**
     * One thing.
     *
     * @param entry number of the entry in the bundle, from 1; 0 for what belongs to no entry
     * @param resource its type
     * @param what in words
     */
    public record Item(int entry, String resource, Kind kind, String what) {}

    /** What would become of it. */
    public enum Kind {
        /** New here. */
        ADD("new"),
        /** Other than what is recorded here. */
        CHANGE("other"),
        /** The same is recorded here. */
        SAME("same"),
        /** Understood, and left out for a reason. */
        LEFT_OUT("left out"),
        /** Not understood. */
        NOT_UNDERSTOOD("not understood");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The items of a kind. */
    public List<Item> of(Kind kind) {
        return items.stream().filter(item -> item.kind() == kind).toList();
    }

    /** Whether taking it over would change anything. */
    public boolean changes() {
        return items.stream().anyMatch(item -> item.kind() == Kind.ADD || item.kind() == Kind.CHANGE);
    }
}
