package slipway.web.episode.write;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import slipway.documents.paper.PaperText;
import slipway.documents.paper.Sentence;

/**
 * What somebody changed in a paper: as changes, so that they can go on top of what somebody else saved meanwhile.
 *
 * @param changed new words by id of the sentence
 * @param struck ids of the sentences to leave out
 * @param added sentences of the writer's own, with the key of their part
 */
record Edits(Map<String, String> changed, Set<String> struck, List<Added> added) {
    /** Field names: the id and the words of each sentence in turn, struck ids, own sentences behind the key of a part. */
    private static final String ID = "id";

    private static final String TEXT = "text";
    private static final String STRIKE = "strike";
    private static final String OWN = "own.";

    Edits {
        changed = new LinkedHashMap<>(changed);
        struck = new LinkedHashSet<>(struck);
        added = List.copyOf(added);
    }

    /** A sentence of the writer's own. */
    record Added(String part, String words) {}

    /**
     * What a form changed.
     *
     * @param base the text that the form was opened on
     */
    static Edits read(Map<String, String[]> fields, PaperText base) {
        String[] ids = fields.getOrDefault(ID, new String[0]);
        String[] texts = fields.getOrDefault(TEXT, new String[0]);
        var changed = new LinkedHashMap<String, String>();
        var struck = new LinkedHashSet<>(List.of(fields.getOrDefault(STRIKE, new String[0])));
        for (int i = 0; i < Math.min(ids.length, texts.length); i++) {
            String words = plain(texts[i]);
            Optional<Sentence> before = base.find(ids[i]);
            if (words.isEmpty()) {
                struck.add(ids[i]);
            } else if (before.filter(each -> plain(each.text()).equals(words)).isEmpty()) {
                changed.put(ids[i], words);
            }
        }
        var added = new ArrayList<Added>();
        fields.forEach((name, values) -> {
            if (name.startsWith(OWN) && !plain(values[0]).isEmpty()) {
                added.add(new Added(name.substring(OWN.length()), plain(values[0])));
            }
        });
        changed.keySet().removeAll(struck);
        return new Edits(changed, struck, added);
    }

    /** Browsers send line ends of their own. */
    private static String plain(String text) {
        return text.replace("\r\n", "\n").strip();
    }

    /** Fields that {@link #read} reads as the same changes. */
    List<StaleForm.Field> fields() {
        var fields = new ArrayList<StaleForm.Field>();
        changed.forEach((id, words) -> {
            fields.add(new StaleForm.Field(ID, id));
            fields.add(new StaleForm.Field(TEXT, words));
        });
        struck.forEach(id -> fields.add(new StaleForm.Field(STRIKE, id)));
        added.forEach(own -> fields.add(new StaleForm.Field(OWN + own.part(), own.words())));
        return fields;
    }

    /** Whether some sentence is longer than a paper takes; the page itself lets nobody type that much. */
    boolean tooLong() {
        return Stream.concat(changed.values().stream(), added.stream().map(Added::words))
                .anyMatch(words -> words.length() > PaperText.MAX_SENTENCE);
    }

    boolean isEmpty() {
        return changed.isEmpty() && struck.isEmpty() && added.isEmpty();
    }

    /**
     * The text with these changes. Words for a sentence that is gone become a sentence of the writer's own in the same
     * part, or in the last one: they are not lost.
     *
     * @throws IllegalArgumentException if a sentence is {@link #tooLong}
     */
    PaperText on(PaperText text) {
        PaperText now = text;
        for (Map.Entry<String, String> change : changed.entrySet()) {
            now = now.find(change.getKey()).isPresent()
                    ? now.edited(change.getKey(), change.getValue())
                    : now.with(part(now, change.getKey()), change.getValue());
        }
        for (Added own : added) {
            now = now.with(part(now, own.part()), own.words());
        }
        for (String id : struck) {
            if (now.find(id).isPresent()) {
                now = now.without(id);
            }
        }
        return now;
    }

    private static String part(PaperText text, String idOrKey) {
        String key = idOrKey.split("/", 2)[0];
        return text.parts().stream()
                .map(part -> part.key())
                .filter(key::equals)
                .findFirst()
                .orElse(text.parts().get(text.parts().size() - 1).key());
    }
}
