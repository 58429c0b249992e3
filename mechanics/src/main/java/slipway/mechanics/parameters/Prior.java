package slipway.mechanics.parameters;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.evidence.BundledTable;

/**
 * What is known about a parameter before the fit ({@code priors.csv}).
 *
 * @param parameter the parameter
 * @param unit its unit; 1 for a ratio
 * @param scale scale on which {@code sd} and {@code personSd} are meant
 * @param median median on the natural scale
 * @param sd uncertainty about the average person
 * @param personSd starting value of the spread between people
 * @param personGroup parameters whose spread is scaled together
 * @param mark seen, memory, trial or assumption
 */
public record Prior(
        ModelParameter parameter,
        String unit,
        Scale scale,
        double median,
        double sd,
        double personSd,
        String personGroup,
        String mark) {
    private static final List<Prior> ALL = load();

    public Prior {
        if (!(median > 0 && sd > 0 && personSd >= 0)) {
            throw new IllegalArgumentException(
                    "prior of %s: median and sd must be positive".formatted(parameter.key()));
        }
    }

    /** The priors of all parameters, in the order of {@link ModelParameter}. */
    public static List<Prior> all() {
        return ALL;
    }

    /** The prior of one parameter. */
    public static Prior of(ModelParameter parameter) {
        return ALL.get(parameter.ordinal());
    }

    /** The vector of all medians. */
    public static ParameterVector medians() {
        return new ParameterVector(ALL.stream().mapToDouble(Prior::median).toArray());
    }

    /** The median on the free scale. */
    public double freeMedian() {
        return scale.toFree(median);
    }

    /** The vector of natural values for given free ones, both in the order of {@link ModelParameter}. */
    public static ParameterVector toNatural(double[] free) {
        double[] natural = new double[free.length];
        for (Prior prior : ALL) {
            int at = prior.parameter.ordinal();
            natural[at] = prior.scale.toNatural(free[at]);
        }
        return new ParameterVector(natural);
    }

    private static List<Prior> load() {
        var byParameter = new ArrayList<Prior>(Collections.nCopies(ModelParameter.values().length, null));
        for (CSVRecord row : BundledTable.read("priors.csv")) {
            Prior prior = read(row);
            byParameter.set(prior.parameter.ordinal(), prior);
        }
        // List.copyOf refuses a missing row.
        return List.copyOf(byParameter);
    }

    private static Prior read(CSVRecord row) {
        String key = row.get("parameter");
        return new Prior(
                ModelParameter.find(key).orElseThrow(() -> new IllegalStateException("priors.csv: unknown " + key)),
                row.get("unit"),
                Scale.valueOf(row.get("scale").toUpperCase(Locale.ROOT)),
                Double.parseDouble(row.get("median")),
                Double.parseDouble(row.get("sd")),
                Double.parseDouble(row.get("personSd")),
                row.get("personGroup"),
                row.get("mark"));
    }
}
