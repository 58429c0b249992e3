package slipway.reasoning.basis;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;

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
        for (CSVRecord row : ReasoningData.table(file)) {
            String id = row.get("id");
            double value = Double.parseDouble(row.get("value"));
            var read = new Coefficient(id, value, row.get("unit"), row.get("mark"), row.get("source"));
            if (rows.put(id, read) != null) {
                throw new IllegalStateException(file + ": " + id + " is given twice");
            }
        }
        return new Coefficients(file, Collections.unmodifiableMap(rows));
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
