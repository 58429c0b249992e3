package slipway.web.bench;

import java.util.Locale;
import slipway.care.bench.Spread;

/** Numbers as the pages write them: a true minus, and none before a zero. */
public final class Numbers {
    private Numbers() {}

    /** A number with so many decimals. */
    public static String text(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text.replace('-', '\u2212');
    }

    /** The interval of a spread with one decimal: {@code 1.2 to 5.0}. */
    public static String interval(Spread spread) {
        return text(spread.low(), 1) + " to " + text(spread.high(), 1);
    }

    /** The same for machines: a plain minus. */
    static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** An angle without needless digits, as fields hold it. */
    static String angle(double deg) {
        return deg == Math.rint(deg) ? Long.toString((long) deg) : String.format(Locale.ROOT, "%.1f", deg);
    }
}
