package slipway.exercises.yaml;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the known word that was probably meant. */
public final class NearestWord {
    private static final int SHOWN_LENGTH = 80;
    private static final int LISTED_WORDS = 15;

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
        return "unknown %s \"%s\" (%s)"
                .formatted(
                        what,
                        shortened(given),
                        find(given, known).map(word -> "nearest: " + word).orElseGet(() -> "known: " + listed(known)));
    }

    private static String listed(Collection<String> known) {
        String first = known.stream().limit(LISTED_WORDS).collect(Collectors.joining(", "));
        return known.size() > LISTED_WORDS ? first + " and %d more".formatted(known.size() - LISTED_WORDS) : first;
    }

    /** A piece of a file for a message: one line, not endless. */
    public static String shortened(String text) {
        String line = text.replaceAll("\\s+", " ");
        return line.length() > SHOWN_LENGTH ? line.substring(0, SHOWN_LENGTH) + "…" : line;
    }

    /** Letters to insert, drop, change or swap with their neighbour to get from one word to the other. */
    private static int edits(String from, String to) {
        int[] before = new int[to.length() + 1];
        int[] above = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int[] row = new int[to.length() + 1];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int change = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(row[j - 1], above[j]) + 1, above[j - 1] + change);
                if (i > 1
                        && j > 1
                        && from.charAt(i - 1) == to.charAt(j - 2)
                        && from.charAt(i - 2) == to.charAt(j - 1)) {
                    row[j] = Math.min(row[j], before[j - 2] + 1);
                }
            }
            before = above;
            above = row;
        }
        return above[to.length()];
    }
}
