package slipway.reasoning;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.evidence.BundledTable;

/** Reads the data files that ship with this module, below {@code /slipway/reasoning/}. */
public final class ReasoningData {
    private ReasoningData() {}

    /**
     * The text of a bundled file.
     *
     * @param name path below {@code /slipway/reasoning/}, for example {@code findings/terms.csv}
     * @throws IllegalStateException if the program was packaged without it
     */
    public static String text(String name) {
        try (InputStream stream = ReasoningData.class.getResourceAsStream("/slipway/reasoning/" + name)) {
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
