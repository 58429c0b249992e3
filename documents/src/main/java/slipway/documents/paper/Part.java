package slipway.documents.paper;

import java.util.List;

/**
 * A part of a paper.
 *
 * @param key stays through versions, for example {@code measures}
 * @param heading as printed
 * @param sentences in reading order
 */
public record Part(String key, String heading, List<Sentence> sentences) {
    public Part {
        sentences = List.copyOf(sentences);
        if (key.isBlank() || key.contains("/")) {
            throw new IllegalArgumentException("the key of a part must be a word, was \"%s\"".formatted(key));
        }
    }

    /** Whether somebody took every sentence out; then it is not printed, but can be written in again. */
    public boolean isEmpty() {
        return sentences.isEmpty();
    }
}
