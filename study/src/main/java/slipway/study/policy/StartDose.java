package slipway.study.policy;

import java.util.EnumMap;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.irritability.Irritability;

/**
 * The first dose by irritability, as the program's plans have it ({@code start-rules.csv}): all ways of dosing start alike.
 */
record StartDose(double fraction, int repetitionsLow, int repetitionsHigh, int sessionsLow, int sessionsHigh) {
    private static final Map<Irritability, StartDose> ALL = load();

    static StartDose of(Irritability irritability) {
        StartDose dose = ALL.get(irritability);
        if (dose == null) {
            throw new IllegalStateException("start-rules.csv has no row " + irritability.key());
        }
        return dose;
    }

    private static Map<Irritability, StartDose> load() {
        var all = new EnumMap<Irritability, StartDose>(Irritability.class);
        for (CSVRecord row : ReasoningData.table("start-rules.csv")) {
            all.put(
                    Irritability.valueOf(row.get("irritability").toUpperCase(java.util.Locale.ROOT)),
                    new StartDose(
                            Double.parseDouble(row.get("fraction")),
                            Integer.parseInt(row.get("repetitionsLow")),
                            Integer.parseInt(row.get("repetitionsHigh")),
                            Integer.parseInt(row.get("sessionsLow")),
                            Integer.parseInt(row.get("sessionsHigh"))));
        }
        return all;
    }
}
