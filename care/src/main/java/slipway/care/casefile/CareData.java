package slipway.care.casefile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.evidence.BundledTable;

/** Reads the data files that ship with this module, below {@code /slipway/care/}. */
final class CareData {
    private CareData() {}

    static String text(String name) {
        try (var stream = CareData.class.getResourceAsStream("/slipway/care/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without its data file " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled file " + name + " cannot be read", e);
        }
    }

    static List<CSVRecord> table(String name) {
        return BundledTable.parseText(text(name));
    }
}
