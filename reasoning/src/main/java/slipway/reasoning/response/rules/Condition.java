package slipway.reasoning.response.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A fact held against a threshold.
 *
 * @param threshold finite
 */
public record Condition(Fact fact, Sign sign, double threshold) {
    private static final Pattern TEXT = Pattern.compile("([A-Za-z0-9]+)\\s*(>=|<=|=|>|<)\\s*(-?[0-9.]+)");

    /** How the fact must stand to the threshold. */
    public enum Sign {
        AT_LEAST(">="),
        AT_MOST("<="),
        EQUAL("="),
        ABOVE(">"),
        BELOW("<");

        private final String text;

        Sign(String text) {
            this.text = text;
        }

        static Sign of(String text) {
            for (Sign sign : values()) {
                if (sign.text.equals(text)) {
                    return sign;
                }
            }
            throw new IllegalStateException("unknown sign \"" + text + "\"");
        }
    }

    public Condition {
        if (!Double.isFinite(threshold)) {
            throw new IllegalArgumentException("the threshold of %s must be finite, was %s".formatted(fact, threshold));
        }
    }

    /** Conditions joined by {@code &}. */
    static List<Condition> readAll(String text) {
        var conditions = new ArrayList<Condition>();
        for (String part : text.split("&", -1)) {
            Matcher matcher = TEXT.matcher(part.strip());
            if (!matcher.matches()) {
                throw new IllegalStateException("a condition must read like \"rise >= 2\", was \"" + part + "\"");
            }
            conditions.add(new Condition(
                    Fact.of(matcher.group(1)), Sign.of(matcher.group(2)), Double.parseDouble(matcher.group(3))));
        }
        return conditions;
    }

    /** Whether the facts meet it; an unknown fact never does. */
    public boolean met(Facts facts) {
        double value = facts.get(fact);
        return switch (sign) {
            case AT_LEAST -> value >= threshold;
            case AT_MOST -> value <= threshold;
            case EQUAL -> value == threshold;
            case ABOVE -> value > threshold;
            case BELOW -> value < threshold;
        };
    }

    /** For reading: the fact in words, with the unit behind the threshold. */
    public String words() {
        String fact = fact().key().replaceAll("([a-z])([A-Z0-9])", "$1 $2").toLowerCase(java.util.Locale.ROOT);
        String number =
                threshold == Math.rint(threshold) ? Long.toString((long) threshold) : Double.toString(threshold);
        boolean yesOrNo = fact().unit().isEmpty() && sign == Sign.EQUAL && (threshold == 0 || threshold == 1);
        return yesOrNo
                ? (threshold == 1 ? fact : "not " + fact)
                : "%s %s %s %s"
                        .formatted(fact, sign.text.replace(">=", "≥").replace("<=", "≤"), number, fact().unit())
                        .strip();
    }

    @Override
    public String toString() {
        return "%s %s %s"
                .formatted(
                        fact.key(),
                        sign.text,
                        threshold == Math.rint(threshold)
                                ? Long.toString((long) threshold)
                                : Double.toString(threshold));
    }
}
