package slipway.exchange.tables;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Tables as CSV (RFC 4180), lines ending in LF. */
public final class Csv {
    private Csv() {}

    /**
     * A table.
     *
     * <p>A cell that a spreadsheet would run as a formula gets an apostrophe in front.
     */
    public static String of(List<String> head, List<List<String>> rows) {
        var text = new StringWriter();
        try (var printer = new CSVPrinter(
                text, CSVFormat.RFC4180.builder().setRecordSeparator('\n').get())) {
            printer.printRecord(head);
            for (List<String> row : rows) {
                if (row.size() != head.size()) {
                    throw new IllegalArgumentException(
                            "a row must have %d cells, had %d".formatted(head.size(), row.size()));
                }
                printer.printRecord(row.stream().map(Csv::harmless));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static String harmless(String cell) {
        boolean number = cell.matches("[+-]?[0-9]+([.][0-9]+)?");
        return !number && !cell.isEmpty() && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
    }
}
