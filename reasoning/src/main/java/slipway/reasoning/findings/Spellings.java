package slipway.reasoning.findings;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Other ways to write the same word: older names, a needless suffix, singular and plural. The word itself comes first. */
final class Spellings {
    private static final List<String> SUFFIXES = List.of(
            "_muscles",
            "_muscle",
            "_strength",
            "_weakness",
            "_power",
            "_area",
            "_region",
            "_skin",
            "_sensation",
            "_reflex",
            "_jerk",
            "_test",
            "_sign",
            "_pain",
            "_tenderness");

    private Spellings() {}

    static Set<String> of(String key) {
        var spellings = new LinkedHashSet<String>();
        spellings.add(key);
        String modern = key.toLowerCase(Locale.ROOT)
                .replace("peroneal", "fibular")
                .replace("peroneus", "fibularis")
                .replace("peronei", "fibularii")
                .replace("big_toe", "great_toe")
                .replace("webspace", "web_space");
        spellings.add(modern);
        for (String suffix : SUFFIXES) {
            if (modern.endsWith(suffix)) {
                spellings.add(modern.substring(0, modern.length() - suffix.length()));
            }
        }
        for (String spelling : new ArrayList<>(spellings)) {
            spellings.add(spelling.endsWith("s") ? spelling.substring(0, spelling.length() - 1) : spelling + "s");
        }
        return spellings;
    }
}
