package slipway.study.data;

import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.basis.Coefficient;

/** A table of single numbers of the study: {@code id,value,unit,mark,source}. */
public final class Settings {
    private final String file;
    private final Map<String, Coefficient> rows = new LinkedHashMap<>();

    private Settings(String file) {
        this.file = file;
    }

    /**
     * Reads a table.
     *
     * @throws IllegalStateException if an id is given twice; rows without mark or source are refused too
     */
    public static Settings load(String file) {
        var settings = new Settings(file);
        for (CSVRecord row : StudyData.table(file)) {
            var read = new Coefficient(
                    row.get("id"),
                    Double.parseDouble(row.get("value")),
                    row.get("unit"),
                    row.get("mark"),
                    row.get("source"));
            if (settings.rows.put(read.id(), read) != null) {
                throw new IllegalStateException(file + ": " + read.id() + " is given twice");
            }
        }
        return settings;
    }

    /** The value of the row of this id. */
    public double value(String id) {
        Coefficient row = rows.get(id);
        if (row == null) {
            throw new IllegalStateException(file + " has no row " + id);
        }
        return row.value();
    }

    /** The value of a row that is a count. */
    public int count(String id) {
        return (int) value(id);
    }
}
