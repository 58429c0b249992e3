package slipway.mechanics.evidence;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads a CSV table with a header row and {@code #} comments, from the class path or from text. */
public final class BundledTable {
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .setIgnoreEmptyLines(true)
            .setTrim(true)
            .get();

    private BundledTable() {}

    /**
     * The rows of a table that ships with the program.
     *
     * @param name file name below {@code /slipway/evidence/}, for example {@code joints.csv}
     * @throws IllegalStateException if the program was packaged without it
     */
    public static List<CSVRecord> read(String name) {
        return parseText(textOf(name));
    }

    /**
     * The text of a table that ships with the program; the same names and error as {@link #read}.
     */
    public static String textOf(String name) {
        try (var stream = BundledTable.class.getResourceAsStream("/slipway/evidence/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without its table " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled table " + name + " cannot be read", e);
        }
    }

    /** The rows of a table given as text. */
    public static List<CSVRecord> parseText(String text) {
        try {
            return parse(new StringReader(text));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<CSVRecord> parse(Reader reader) throws IOException {
        try (var parser = FORMAT.parse(reader)) {
            return parser.getRecords();
        }
    }
}
