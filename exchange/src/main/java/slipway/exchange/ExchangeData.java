package slipway.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.evidence.BundledTable;

/** Reads the data files that ship with this module. */
public final class ExchangeData {
    private ExchangeData() {}

    /** The text of a bundled file. */
    public static String text(String name) {
        try (var stream = ExchangeData.class.getResourceAsStream("/slipway/exchange/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without its data file " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled file " + name + " cannot be read", e);
        }
    }

    /** The rows of a bundled CSV file. */
    public static List<CSVRecord> table(String name) {
        return BundledTable.parseText(text(name));
    }
}
