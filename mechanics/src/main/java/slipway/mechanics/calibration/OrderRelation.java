package slipway.mechanics.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A relation between rows, such as {@code a < b < c; d > e}: every comparison must hold in the same draw.
 *
 * @param comparisons smaller and greater row id of each comparison
 */
record OrderRelation(List<Comparison> comparisons) {
    record Comparison(String smaller, String greater) {}

    /** Reads the text form; empty if it is not of this form. */
    static Optional<OrderRelation> parse(String text) {
        var comparisons = new ArrayList<Comparison>();
        for (String chain : text.split(";", -1)) {
            List<String> words = RowReader.words(chain);
            if (words.size() < 3 || words.size() % 2 == 0) {
                return Optional.empty();
            }
            for (int i = 1; i < words.size(); i += 2) {
                switch (words.get(i)) {
                    case "<" -> comparisons.add(new Comparison(words.get(i - 1), words.get(i + 1)));
                    case ">" -> comparisons.add(new Comparison(words.get(i + 1), words.get(i - 1)));
                    default -> {
                        return Optional.empty();
                    }
                }
            }
        }
        return Optional.of(new OrderRelation(List.copyOf(comparisons)));
    }

    /** Notes every order row whose relation cannot be read or names a row that is not there. */
    static void check(List<EvidenceRow> rows, List<String> mistakes) {
        Set<String> ids = rows.stream()
                .filter(row -> row.quantity() != Quantity.ORDER)
                .map(EvidenceRow::id)
                .collect(Collectors.toSet());
        for (EvidenceRow row : rows) {
            if (row.quantity() != Quantity.ORDER) {
                continue;
            }
            Optional<OrderRelation> relation = parse(row.relation());
            if (relation.isEmpty()) {
                mistakes.add(
                        row.id() + ": relation must look like \"a < b < c; d > e\", was \"" + row.relation() + "\"");
                continue;
            }
            for (Comparison comparison : relation.get().comparisons) {
                for (String id : List.of(comparison.smaller, comparison.greater)) {
                    if (!ids.contains(id)) {
                        mistakes.add(row.id() + ": relation names \"" + id + "\", which is no row with values here");
                    }
                }
            }
        }
    }

    /** Share of draws in which every comparison holds, 0 to 1. */
    double share(Map<String, double[]> valuesById, int draws) {
        int holds = 0;
        for (int d = 0; d < draws; d++) {
            boolean all = true;
            for (Comparison comparison : comparisons) {
                all &= value(valuesById, comparison.smaller, d) < value(valuesById, comparison.greater, d);
            }
            holds += all ? 1 : 0;
        }
        return (double) holds / draws;
    }

    private static double value(Map<String, double[]> valuesById, String id, int draw) {
        double[] values = valuesById.get(id);
        if (values == null) {
            throw new IllegalArgumentException("no values for row " + id);
        }
        return values[draw];
    }
}
