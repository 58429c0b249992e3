package slipway.exercises.yaml;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the known word that was probably meant. */
public final class NearestWord {
    private NearestWord() {}

    /** The known word with the fewest edits from the given one, if that is at most a third of its length (or 1). */
    public static Optional<String> find(String given, Collection<String> known) {
        int allowed = Math.max(1, given.length() / 3);
        return known.stream()
                .filter(word -> Math.abs(word.length() - given.length()) <= allowed)
                .min(Comparator.<String>comparingInt(word -> edits(given, word)).thenComparing(word -> word))
                .filter(word -> edits(given, word) <= allowed);
    }

    /** {@code unknown key "stesp" (nearest: steps)}, or with the known words if none is near. */
    public static String complaint(String what, String given, Collection<String> known) {
        String shown = given.length() > 40 ? given.substring(0, 40) + "…" : given;
        return "unknown %s \"%s\" (%s)"
                .formatted(
                        what,
                        shown,
                        find(given, known)
                                .map(word -> "nearest: " + word)
                                .orElseGet(() -> "known: " + String.join(", ", known)));
    }

    /** Levenshtein distance with two rows. */
    private static int edits(String from, String to) {
        int[] above = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int[] row = new int[to.length() + 1];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int swap = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(row[j - 1], above[j]) + 1, above[j - 1] + swap);
            }
            above = row;
        }
        return above[to.length()];
    }
}
