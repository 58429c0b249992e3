package slipway.reasoning.dose;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.irritability.Irritability;

/**
 * The first dose for one level of irritability ({@code start-rules.csv}).
 *
 * @param fraction share of the tolerance above rest that the peak may reach
 * @param repetitionsHigh the most before the next visit, as {@code sessionsHigh}
 * @param lyingOnly whether only lying positions may start
 */
public record StartRule(
        double fraction,
        int repetitionsLow,
        int repetitionsHigh,
        int sets,
        int sessionsLow,
        int sessionsHigh,
        double secondsPerDirection,
        boolean lyingOnly) {
    private static final Map<Irritability, StartRule> ALL = load();

    public StartRule {
        if (!(fraction > 0 && fraction < 1)) {
            throw new IllegalArgumentException("the fraction of the tolerance must be within 0 and 1, was " + fraction);
        }
        if (!(repetitionsLow >= 1 && repetitionsHigh >= repetitionsLow && sets >= 1)) {
            throw new IllegalArgumentException("repetitions and sets must be 1 or more and rise");
        }
        if (!(sessionsLow >= 1 && sessionsHigh >= sessionsLow && secondsPerDirection > 0)) {
            throw new IllegalArgumentException("sessions must be 1 or more and rise, seconds above 0");
        }
    }

    /** The rule for this level. */
    public static StartRule of(Irritability irritability) {
        StartRule rule = ALL.get(irritability);
        if (rule == null) {
            throw new IllegalStateException("start-rules.csv has no row " + irritability.key());
        }
        return rule;
    }

    private static Map<Irritability, StartRule> load() {
        var rules = new EnumMap<Irritability, StartRule>(Irritability.class);
        for (CSVRecord row : ReasoningData.table("start-rules.csv")) {
            String key = row.get("irritability");
            Irritability level = Arrays.stream(Irritability.values())
                    .filter(value -> value.key().equals(key))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("start-rules.csv: unknown irritability " + key));
            rules.put(level, read(row));
        }
        return Collections.unmodifiableMap(rules);
    }

    private static StartRule read(CSVRecord row) {
        return new StartRule(
                Double.parseDouble(row.get("fraction")),
                Integer.parseInt(row.get("repetitionsLow")),
                Integer.parseInt(row.get("repetitionsHigh")),
                Integer.parseInt(row.get("sets")),
                Integer.parseInt(row.get("sessionsLow")),
                Integer.parseInt(row.get("sessionsHigh")),
                Double.parseDouble(row.get("secondsPerDirection")),
                row.get("lyingOnly").equals("yes"));
    }
}
