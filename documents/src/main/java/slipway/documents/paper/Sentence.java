package slipway.documents.paper;

import java.util.List;

/**
 * A sentence of a paper.
 *
 * @param id stays with the sentence through versions, for example {@code measures/lefs}
 * @param text as it stands
 * @param assembled as the program put it together; empty if a person wrote it
 * @param sources paths of what it came from, for example {@code case/history/onset}, {@code visit/3}, {@code measure/lefs};
 *     {@code text} for a fixed sentence
 * @param blank whether it says that something was not recorded
 */
public record Sentence(String id, String text, String assembled, List<String> sources, boolean blank) {
    public Sentence {
        sources = List.copyOf(sources);
        if (id.isBlank() || text.isBlank()) {
            throw new IllegalArgumentException("a sentence needs an id and words, was \"%s\"".formatted(id));
        }
        if (!assembled.isEmpty() && sources.isEmpty()) {
            throw new IllegalArgumentException("the assembled sentence %s needs a source".formatted(id));
        }
    }

    /** Who is answerable for the words. */
    public enum State {
        /** As the program put it together from the record. */
        ASSEMBLED,
        /** The program found nothing recorded. */
        BLANK,
        /** Changed by a person. */
        EDITED,
        /** Written by a person. */
        WRITTEN
    }

    /** Where the words come from. */
    public State state() {
        if (assembled.isEmpty()) {
            return State.WRITTEN;
        }
        if (!text.equals(assembled)) {
            return State.EDITED;
        }
        return blank ? State.BLANK : State.ASSEMBLED;
    }

    /** The same with other words; its sources stay. */
    Sentence reading(String words) {
        return new Sentence(id, words.strip(), assembled, sources, blank);
    }
}
