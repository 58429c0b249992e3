package slipway.reasoning.billing;

import java.util.Arrays;
import java.util.Optional;

/** How minutes are counted. Which one holds is a setting of the payer. */
public enum UnitRule {
    /** The day's total says how many units there are; they go to the services with the most time. */
    EIGHT_MINUTE("eight-minute", "8-minute rule: the day's total counts"),
    /** Each service counts alone; leftover minutes are not pooled. */
    MIDPOINT("midpoint", "midpoint rule: each service counts alone");

    private final String key;
    private final String words;

    UnitRule(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** As written on the command line and in settings. */
    public String key() {
        return key;
    }

    /** What it says, in a few words. */
    public String words() {
        return words;
    }

    /** The rule of this key. */
    public static Optional<UnitRule> find(String key) {
        return Arrays.stream(values()).filter(rule -> rule.key.equals(key)).findFirst();
    }
}
