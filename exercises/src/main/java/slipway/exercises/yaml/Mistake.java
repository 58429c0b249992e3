package slipway.exercises.yaml;

import java.util.Comparator;

/**
 * One mistake in a file.
 *
 * @param line from 1; 0 if the mistake is of the file as a whole
 * @param column from 1; 0 if the mistake is of the file as a whole
 * @param path where in the file, for example {@code poses[1].angles}; empty for the file as a whole
 * @param message what is wrong, the rule, and the value
 */
public record Mistake(int line, int column, String path, String message) implements Comparable<Mistake> {
    private static final Comparator<Mistake> IN_FILE_ORDER = Comparator.comparingInt(Mistake::line)
            .thenComparingInt(Mistake::column)
            .thenComparing(Mistake::path)
            .thenComparing(Mistake::message);

    static Mistake ofFile(String message) {
        return new Mistake(0, 0, "", message);
    }

    @Override
    public int compareTo(Mistake other) {
        return IN_FILE_ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        String where = line == 0 ? "" : "line %d, column %d: ".formatted(line, column);
        return where + (path.isEmpty() ? "" : path + ": ") + message;
    }
}
