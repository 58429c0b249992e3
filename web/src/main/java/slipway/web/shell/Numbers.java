package slipway.web.shell;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import slipway.reasoning.tolerance.Interval;

/** Numbers as the pages say them. */
public final class Numbers {
    private static final MathContext THREE_DIGITS = new MathContext(3);
    private static final double WHOLE_FROM = 100;

    private Numbers() {}

    /** At most three digits that matter, without an exponent. */
    public static String plain(double value) {
        if (!Double.isFinite(value)) {
            return "–";
        }
        double rounded = Math.abs(value) >= WHOLE_FROM ? Math.rint(value) : value;
        BigDecimal digits = Math.abs(rounded) >= WHOLE_FROM
                ? BigDecimal.valueOf(rounded)
                : BigDecimal.valueOf(rounded).round(THREE_DIGITS);
        return digits.signum() == 0 ? "0" : digits.stripTrailingZeros().toPlainString();
    }

    /** One digit behind the point. */
    public static String one(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.equals("-0.0") ? "0.0" : text;
    }

    /** A share in whole percent. */
    public static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    /** A median with the ends of its interval. */
    public static String interval(Interval interval) {
        return "%s (%s to %s)".formatted(one(interval.median()), one(interval.low()), one(interval.high()));
    }
}
