package slipway.web.episode.examine;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import slipway.reasoning.findings.FindingKind;

/**
 * A line of {@code rows.csv}.
 *
 * @param block the block that it stands in
 * @param item its word in the vocabulary
 * @param more whether it is shown only when asked for
 */
record RowPlan(String block, FindingKind kind, String item, boolean more) {
    private static final List<RowPlan> ALL = read();

    /** All lines in the order of the file. */
    static List<RowPlan> list() {
        return ALL;
    }

    private static List<RowPlan> read() {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (InputStream stream = RowPlan.class.getResourceAsStream("rows.csv");
                var reader = new InputStreamReader(Objects.requireNonNull(stream), StandardCharsets.UTF_8);
                var lines = format.parse(reader)) {
            return lines.stream()
                    .map(line -> new RowPlan(
                            line.get("block"),
                            FindingKind.find(line.get("kind")).orElseThrow(),
                            line.get("item"),
                            line.get("shown").equals("more")))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read rows.csv", e);
        }
    }
}
