package slipway.documents.paper;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Two versions of a paper side by side.
 *
 * @param rows in reading order, each sentence of either version in exactly one
 */
public record PaperDiff(List<Row> rows) {
    public PaperDiff {
        rows = List.copyOf(rows);
    }

    /**
     * A sentence in both versions, or in one of them.
     *
     * @param before words of the earlier version; empty if it was not there
     * @param after words of the later version; empty if it is gone
     */
    public record Row(String id, Kind kind, List<Piece> before, List<Piece> after) {
        public Row {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }
    }

    /** What became of a sentence. */
    public enum Kind {
        SAME,
        CHANGED,
        ADDED,
        REMOVED
    }

    /** Words that stand together and are, or are not, in the other version. */
    public record Piece(String words, boolean only) {}

    /** How the later version differs. */
    public static PaperDiff of(PaperText before, PaperText after) {
        var rows = new ArrayList<Row>();
        for (String key : keys(before, after)) {
            List<Sentence> old = part(before, key);
            List<Sentence> now = part(after, key);
            Aligned.of(old, now, Sentence::id).forEach(pair -> rows.add(row(pair)));
        }
        return new PaperDiff(rows);
    }

    /** Whether nothing differs. */
    public boolean same() {
        return rows.stream().allMatch(row -> row.kind() == Kind.SAME);
    }

    /** Keys of the parts, those of the later version first. */
    private static LinkedHashSet<String> keys(PaperText before, PaperText after) {
        Function<PaperText, List<String>> keys =
                text -> text.parts().stream().map(Part::key).toList();
        var all = new LinkedHashSet<>(keys.apply(after));
        all.addAll(keys.apply(before));
        return all;
    }

    private static List<Sentence> part(PaperText text, String key) {
        return text.parts().stream()
                .filter(part -> part.key().equals(key))
                .flatMap(part -> part.sentences().stream())
                .toList();
    }

    private static Row row(Aligned.Pair<Sentence> pair) {
        String id = pair.before().or(pair::after).orElseThrow().id();
        if (pair.before().isEmpty()) {
            return new Row(id, Kind.ADDED, List.of(), List.of(new Piece(text(pair.after()), true)));
        }
        if (pair.after().isEmpty()) {
            return new Row(id, Kind.REMOVED, List.of(new Piece(text(pair.before()), true)), List.of());
        }
        if (text(pair.before()).equals(text(pair.after()))) {
            var same = List.of(new Piece(text(pair.before()), false));
            return new Row(id, Kind.SAME, same, same);
        }
        var words = Aligned.of(words(pair.before()), words(pair.after()), Function.identity());
        return new Row(id, Kind.CHANGED, pieces(words, Aligned.Pair::before), pieces(words, Aligned.Pair::after));
    }

    private static String text(Optional<Sentence> sentence) {
        return sentence.map(Sentence::text).orElse("");
    }

    private static List<String> words(Optional<Sentence> sentence) {
        return List.of(text(sentence).split("\\s+", -1));
    }

    private static List<Piece> pieces(
            List<Aligned.Pair<String>> pairs, Function<Aligned.Pair<String>, Optional<String>> side) {
        var pieces = new ArrayList<Piece>();
        for (Aligned.Pair<String> pair : pairs) {
            if (side.apply(pair).isPresent()) {
                pieces.add(new Piece(side.apply(pair).get(), !pair.both()));
            }
        }
        var joined = new ArrayList<Piece>();
        for (int from = 0, to; from < pieces.size(); from = to) {
            boolean only = pieces.get(from).only();
            to = from;
            while (to < pieces.size() && pieces.get(to).only() == only) {
                to++;
            }
            joined.add(new Piece(
                    pieces.subList(from, to).stream().map(Piece::words).collect(Collectors.joining(" ")), only));
        }
        return joined;
    }
}
