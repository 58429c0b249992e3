package slipway.reasoning.basis;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.evidence.BundledTable;

/** A table of coefficients that ships with the program: {@code id,value,unit,mark,source}. */
public final class Coefficients {
    private final String file;
    private final Map<String, Coefficient> rows;

    private Coefficients(String file, Map<String, Coefficient> rows) {
        this.file = file;
        this.rows = rows;
    }

    /**
     * Reads a table below {@code /slipway/reasoning/}.
     *
     * @throws IllegalStateException if it is missing, repeats an id, or has a row without number, mark or source
     */
    public static Coefficients load(String file) {
        var rows = new LinkedHashMap<String, Coefficient>();
        for (CSVRecord row : table(file)) {
            String id = row.get("id");
            double value = Double.parseDouble(row.get("value"));
            var read = new Coefficient(id, value, row.get("unit"), row.get("mark"), row.get("source"));
            if (rows.put(id, read) != null) {
                throw new IllegalStateException(file + ": " + id + " is given twice");
            }
        }
        return new Coefficients(file, Collections.unmodifiableMap(rows));
    }

    /** The rows of any table below {@code /slipway/reasoning/}. */
    public static List<CSVRecord> table(String file) {
        try (var stream = Coefficients.class.getResourceAsStream("/slipway/reasoning/" + file)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without its table " + file);
            }
            return BundledTable.parseText(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled table " + file + " cannot be read", e);
        }
    }

    /** The row of this id. */
    public Coefficient get(String id) {
        Coefficient row = rows.get(id);
        if (row == null) {
            throw new IllegalStateException(file + " has no row " + id);
        }
        return row;
    }

    /** The value of the row of this id. */
    public double value(String id) {
        return get(id).value();
    }

    /** All rows in the order of the file. */
    public Collection<Coefficient> all() {
        return rows.values();
    }
}
