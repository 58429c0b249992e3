package slipway.benchmarks.load;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** How long answers took, by what was asked, and how many were not the right ones. */
final class Times {
    private final Map<String, List<Double>> millis = new TreeMap<>();
    private final Map<String, Integer> wrong = new TreeMap<>();

    synchronized void add(String what, double took, boolean right) {
        millis.computeIfAbsent(what, key -> new ArrayList<>()).add(took);
        wrong.merge(what, right ? 0 : 1, Integer::sum);
    }

    synchronized int count() {
        return millis.values().stream().mapToInt(List::size).sum();
    }

    synchronized int wrong() {
        return wrong.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** One CSV row for each kind: what, how many, how many were wrong, median, 95th and 99th of a hundred, in ms. */
    synchronized List<String> rows() {
        var rows = new ArrayList<String>();
        millis.forEach((what, times) -> {
            var sorted = new ArrayList<>(times);
            Collections.sort(sorted);
            rows.add("%s,%d,%d,%s,%s,%s"
                    .formatted(what, sorted.size(), wrong.get(what), at(sorted, 50), at(sorted, 95), at(sorted, 99)));
        });
        return rows;
    }

    /** The smallest value that so many of a hundred do not exceed. */
    private static String at(List<Double> sorted, int percent) {
        int index = Math.max(0, (int) Math.ceil(percent / 100.0 * sorted.size()) - 1);
        return String.format(Locale.ROOT, "%.0f", sorted.get(index));
    }
}
