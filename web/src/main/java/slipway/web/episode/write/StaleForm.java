package slipway.web.episode.write;

import java.util.ArrayList;
import java.util.List;
import slipway.documents.paper.PaperText;
import slipway.documents.paper.Sentence;

/**
 * The changes of a second editor beside what is saved now.
 *
 * @param rows one for each change
 * @param fields that send the same changes again
 */
public record StaleForm(List<Row> rows, List<Field> fields) {
    public StaleForm {
        rows = List.copyOf(rows);
        fields = List.copyOf(fields);
    }

    /**
     * One change.
     *
     * @param theirs as saved; blank if there is no such sentence
     * @param mine as typed; blank if it was to be left out
     */
    public record Row(String theirs, String mine) {}

    /** A hidden field. */
    public record Field(String name, String value) {}

    static StaleForm of(Edits edits, PaperText saved) {
        var rows = new ArrayList<Row>();
        edits.changed().forEach((id, words) -> rows.add(new Row(words(saved, id), words)));
        edits.struck().forEach(id -> rows.add(new Row(words(saved, id), "")));
        edits.added().forEach(own -> rows.add(new Row("", own.words())));
        return new StaleForm(rows, edits.fields());
    }

    private static String words(PaperText saved, String id) {
        return saved.find(id).map(Sentence::text).orElse("");
    }
}
