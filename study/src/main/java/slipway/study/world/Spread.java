package slipway.study.world;

import org.apache.commons.csv.CSVRecord;

/**
 * From what a hidden number is drawn.
 *
 * @param a see {@link Form}
 * @param b see {@link Form}
 * @param low least value
 * @param high largest value
 */
public record Spread(Form form, double a, double b, double low, double high, String unit, String mark, String source) {
    /** The shape of a distribution with its two numbers. */
    public enum Form {
        /** Always {@code a}. */
        FIXED,
        /** Mean {@code a}, standard deviation {@code b}. */
        NORMAL,
        /** Median {@code a}, standard deviation of the logarithm {@code b}. */
        LOGNORMAL,
        /** Median {@code a}, standard deviation of the logit {@code b}. */
        LOGITNORMAL,
        /** Even from {@code a} to {@code b}. */
        UNIFORM
    }

    public Spread {
        if (!Double.isFinite(a) || !Double.isFinite(b) || !(low <= high)) {
            throw new IllegalArgumentException("a spread needs finite numbers and low <= high, was a %s, b %s, %s to %s"
                    .formatted(a, b, low, high));
        }
        if (form != Form.FIXED && form != Form.UNIFORM && !(b >= 0)) {
            throw new IllegalArgumentException("the spread must not be negative, was " + b);
        }
        if (mark.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException("a spread lacks its mark or its source");
        }
    }

    static Spread of(CSVRecord row) {
        return new Spread(
                Form.valueOf(row.get("form").toUpperCase(java.util.Locale.ROOT)),
                Double.parseDouble(row.get("a")),
                Double.parseDouble(row.get("b")),
                Double.parseDouble(row.get("low")),
                Double.parseDouble(row.get("high")),
                row.get("unit"),
                row.get("mark"),
                row.get("source"));
    }

    /** The value for a standard normal number and an even one in (0, 1). */
    public double value(double normal, double uniform) {
        double value = switch (form) {
            case FIXED -> a;
            case NORMAL -> a + b * normal;
            case LOGNORMAL -> a * Math.exp(b * normal);
            case LOGITNORMAL -> 1 / (1 + Math.exp(-Math.log(a / (1 - a)) - b * normal));
            case UNIFORM -> a + (b - a) * uniform;
        };
        return form == Form.FIXED ? value : Math.min(high, Math.max(low, value));
    }
}
