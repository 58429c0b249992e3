package slipway.documents.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import slipway.exercises.exercise.Language;

/**
 * A paper as sentences. Values of this type never change; each edit gives a new one.
 *
 * @param day the paper is about, and dated with
 * @param struck ids of assembled sentences that a person took out
 */
public record PaperText(
        PaperKind kind, Language language, String title, LocalDate day, List<Part> parts, Set<String> struck) {
    /** Longest sentence, so that a draft stays a text that can be read. */
    public static final int MAX_SENTENCE = 4000;

    public PaperText {
        parts = List.copyOf(parts);
        struck = Set.copyOf(struck);
        var ids = new HashSet<String>();
        for (Part part : parts) {
            for (Sentence sentence : part.sentences()) {
                if (!ids.add(sentence.id())) {
                    throw new IllegalArgumentException(
                            "each sentence needs an id of its own, had two " + sentence.id());
                }
            }
        }
    }

    /** All sentences in reading order. */
    public List<Sentence> sentences() {
        return parts.stream().flatMap(part -> part.sentences().stream()).toList();
    }

    /** The sentence of this id. */
    public Optional<Sentence> find(String id) {
        return sentences().stream().filter(each -> each.id().equals(id)).findFirst();
    }

    /** What was not recorded. */
    public List<Sentence> blanks() {
        return sentences().stream()
                .filter(each -> each.state() == Sentence.State.BLANK)
                .toList();
    }

    /**
     * The paper with other words in a sentence.
     *
     * @throws IllegalArgumentException if there is no such sentence, or the words are blank or too long
     */
    public PaperText edited(String id, String words) {
        checked(words);
        if (find(id).isEmpty()) {
            throw new IllegalArgumentException("the paper has no sentence " + id);
        }
        return mapped(part -> new Part(
                part.key(),
                part.heading(),
                part.sentences().stream()
                        .map(each -> each.id().equals(id) ? each.reading(words) : each)
                        .toList()));
    }

    /** The paper with a sentence of the writer's own at the end of a part. */
    public PaperText with(String partKey, String words) {
        checked(words);
        if (parts.stream().noneMatch(part -> part.key().equals(partKey))) {
            throw new IllegalArgumentException("the paper has no part " + partKey);
        }
        return mapped(part -> part.key().equals(partKey) ? with(part, words) : part);
    }

    private Part with(Part part, String words) {
        int number = 1;
        while (find("%s/own-%d".formatted(part.key(), number)).isPresent()) {
            number++;
        }
        var sentences = new ArrayList<>(part.sentences());
        sentences.add(new Sentence("%s/own-%d".formatted(part.key(), number), words.strip(), "", List.of(), false));
        return new Part(part.key(), part.heading(), sentences);
    }

    /** The paper without a sentence; it does not come back when the paper is assembled again. */
    public PaperText without(String id) {
        Sentence gone = find(id).orElseThrow(() -> new IllegalArgumentException("the paper has no sentence " + id));
        var strike = new LinkedHashSet<>(struck);
        if (gone.state() != Sentence.State.WRITTEN) {
            strike.add(id);
        }
        PaperText rest = mapped(part -> new Part(
                part.key(),
                part.heading(),
                part.sentences().stream().filter(each -> !each.id().equals(id)).toList()));
        return new PaperText(kind, language, title, day, rest.parts(), strike);
    }

    private PaperText mapped(UnaryOperator<Part> change) {
        return new PaperText(
                kind, language, title, day, parts.stream().map(change).toList(), struck);
    }

    private static void checked(String words) {
        if (words.isBlank() || words.length() > MAX_SENTENCE) {
            throw new IllegalArgumentException(
                    "a sentence must have 1 to %d characters, had %d".formatted(MAX_SENTENCE, words.length()));
        }
    }
}
