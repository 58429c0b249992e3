package slipway.app.nerve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** A table of a Markdown page. */
final class MarkdownTable {
    private final List<List<String>> rows = new ArrayList<>();

    MarkdownTable(String... header) {
        rows.add(List.of(header));
        rows.add(Collections.nCopies(header.length, "---"));
    }

    MarkdownTable row(String... cells) {
        if (cells.length != rows.get(0).size()) {
            throw new IllegalArgumentException("a row needs " + rows.get(0).size() + " cells, got " + cells.length);
        }
        rows.add(List.of(cells));
        return this;
    }

    /** The table with an empty line after it. */
    String text() {
        var out = new StringBuilder();
        for (List<String> row : rows) {
            out.append("| ");
            row.forEach(cell -> out.append(cell.replace("|", "\\|")).append(" | "));
            out.setLength(out.length() - 1);
            out.append('\n');
        }
        return out.append('\n').toString();
    }

    /** A number with a true minus sign; what rounds to zero has none. */
    static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text.replace('-', '−');
    }

    /** The same with a sign in front of positive numbers too. */
    static String signed(double value, int decimals) {
        String text = number(value, decimals);
        return text.startsWith("−") || Double.parseDouble(text) == 0 ? text : "+" + text;
    }
}
