package slipway.mechanics.parameters;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.evidence.BundledTable;

/** The text form of a fit: one row per parameter, its covariance with the others in columns. */
public final class ParameterFile {
    /** Name of the bundled file among the tables. */
    public static final String NAME = "parameters.csv";

    private static final String HASH_LINE = "# evidenceSha256: ";

    private ParameterFile() {}

    static String bundledSha256() {
        try {
            byte[] text = BundledTable.textOf(NAME).replace("\r", "").getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    static FittedParameters bundled() {
        return read(BundledTable.textOf(NAME));
    }

    /**
     * Reads a fit.
     *
     * @throws IllegalArgumentException if a parameter or a column is missing or not a number
     */
    public static FittedParameters read(String text) {
        List<CSVRecord> rows = BundledTable.parseText(text);
        int size = ModelParameter.values().length;
        double[] mean = new double[size];
        double[] personSd = new double[size];
        double[][] covariance = new double[size][size];
        for (ModelParameter parameter : ModelParameter.values()) {
            CSVRecord row = rows.stream()
                    .filter(r -> r.get("parameter").equals(parameter.key()))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no fitted value of " + parameter.key()));
            int at = parameter.ordinal();
            mean[at] = Double.parseDouble(row.get("free"));
            personSd[at] = Double.parseDouble(row.get("personSd"));
            for (ModelParameter other : ModelParameter.values()) {
                covariance[at][other.ordinal()] = Double.parseDouble(row.get("cov " + other.key()));
            }
        }
        return new FittedParameters(mean, covariance, personSd, hash(text));
    }

    private static String hash(String text) {
        return text.lines()
                .filter(line -> line.startsWith(HASH_LINE))
                .map(line -> line.substring(HASH_LINE.length()).trim())
                .findFirst()
                .orElse("unknown");
    }

    /** Writes a fit, with notes (one per line) as comments above it. */
    public static String write(FittedParameters fit, List<String> notes) {
        var out = new StringBuilder("# Fitted parameters of the nerve model, written by \"slipway calibrate\".\n");
        out.append(
                "# source: the calibrate rows of nerve-motion.csv with the priors of priors.csv; see docs/validation.md.\n");
        out.append("# value: natural scale. free, se, personSd and the covariance: on the scale of priors.csv.\n");
        out.append("# posteriorToPrior: se over the sd of the prior; near 1 means that the measurements say little.\n");
        out.append(HASH_LINE).append(fit.evidenceSha256()).append('\n');
        notes.forEach(note -> out.append("# ").append(note).append('\n'));
        out.append("parameter,unit,value,free,se,posteriorToPrior,personSd");
        for (ModelParameter parameter : ModelParameter.values()) {
            out.append(",cov ").append(parameter.key());
        }
        out.append('\n');
        for (Prior prior : Prior.all()) {
            appendRow(out, fit, prior);
        }
        return out.toString();
    }

    private static void appendRow(StringBuilder out, FittedParameters fit, Prior prior) {
        int at = prior.parameter().ordinal();
        double se = fit.standardError(prior.parameter());
        out.append(prior.parameter().key()).append(',').append(prior.unit());
        for (double value : new double[] {
            prior.scale().toNatural(fit.mean()[at]), fit.mean()[at], se, se / prior.sd(), fit.personSd()[at]
        }) {
            out.append(',').append(number(value));
        }
        for (ModelParameter other : ModelParameter.values()) {
            out.append(',').append(number(fit.covariance()[at][other.ordinal()]));
        }
        out.append('\n');
    }

    /** Enough digits that rounding moves no result, few enough to read. */
    private static String number(double value) {
        return String.format(Locale.ROOT, "%.8g", value);
    }
}
