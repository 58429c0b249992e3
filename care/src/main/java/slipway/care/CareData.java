package slipway.care;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.body.Side;
import slipway.mechanics.evidence.BundledTable;

/** Reads the data files that ship with this module, below {@code /slipway/care/}. */
public final class CareData {
    private CareData() {}

    /**
     * The text of a bundled file.
     *
     * @throws IllegalStateException if the program was packaged without it
     */
    public static String text(String name) {
        try (var stream = CareData.class.getResourceAsStream("/slipway/care/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without its data file " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled file " + name + " cannot be read", e);
        }
    }

    /** A side in a sentence. */
    public static String word(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    /** The rows of a bundled CSV file. */
    public static List<CSVRecord> table(String name) {
        return BundledTable.parseText(text(name));
    }
}
