package slipway.documents.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.documents.words.Words;

/** Puts sentences together, part by part. */
final class Writing {
    /** Source of a sentence that says the same in every paper. */
    private static final String FIXED = "text";

    private final Words words;
    private final List<Part> parts = new ArrayList<>();
    private final List<Sentence> sentences = new ArrayList<>();
    private String key = "";

    Writing(Words words) {
        this.words = words;
    }

    Words words() {
        return words;
    }

    /** Begins a part; its heading is the text {@code part.<key>}. */
    void part(String partKey) {
        close();
        key = partKey;
    }

    private void close() {
        if (!sentences.isEmpty()) {
            parts.add(new Part(key, words.get("part." + key), sentences));
            sentences.clear();
        }
    }

    /** A sentence from the record. */
    void say(String id, String text, String... sources) {
        sentences.add(new Sentence(key + "/" + id, ended(text), ended(text), List.of(sources), false));
    }

    /** A sentence that says the same in every paper. */
    void fixed(String textKey) {
        say(textKey, words.get(textKey), FIXED);
    }

    /** A sentence that says that something was not recorded. */
    void blank(String id, String labelKey, String source) {
        String text = words.get("blank", words.get(labelKey));
        sentences.add(new Sentence(key + "/" + id, text, text, List.of(source), true));
    }

    /** A label with what was recorded, or that nothing was. */
    void told(String id, String labelKey, Optional<String> value, String source) {
        if (value.filter(text -> !text.isBlank()).isPresent()) {
            say(id, words.get("told", words.get(labelKey), value.get().strip()), source);
        } else {
            blank(id, labelKey, source);
        }
    }

    /** The parts so far. */
    List<Part> parts() {
        close();
        return List.copyOf(parts);
    }

    private static String ended(String text) {
        String stripped = text.strip();
        return stripped.matches("(?s).*[.!?:]") ? stripped : stripped + ".";
    }
}
