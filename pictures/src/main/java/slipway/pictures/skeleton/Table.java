package slipway.pictures.skeleton;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.evidence.BundledTable;

/** A table that ships with the pictures. */
final class Table {
    private Table() {}

    static List<CSVRecord> read(String name) {
        try (var stream = Table.class.getResourceAsStream("/slipway/pictures/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without its table " + name);
            }
            return BundledTable.parseText(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled table " + name + " cannot be read", e);
        }
    }
}
