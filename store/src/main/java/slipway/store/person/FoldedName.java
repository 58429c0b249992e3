package slipway.store.person;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Names as they are searched: small letters without accents, one space between words. */
public final class FoldedName {
    /** More beginnings than this of one name are not searched. */
    private static final int MOST_WORDS = 8;

    private FoldedName() {}

    /** The folded text. */
    public static String of(String text) {
        String letters = Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
        return letters.replaceAll("[\\s\\p{Z}\\p{Cc}\\p{Pd}]+", " ").strip();
    }

    /** The folded name from each of its words to the end; the whole name first. */
    static List<String> beginnings(String name) {
        String folded = of(name);
        var all = new ArrayList<String>();
        all.add(folded);
        for (int at = folded.indexOf(' '); at >= 0 && all.size() < MOST_WORDS; at = folded.indexOf(' ', at + 1)) {
            all.add(folded.substring(at + 1));
        }
        return all;
    }
}
