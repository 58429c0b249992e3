package slipway.web.told;

import java.util.List;
import java.util.Optional;
import slipway.documents.words.Words;
import slipway.reasoning.screening.Level;
import slipway.reasoning.screening.ScreeningRule;
import slipway.reasoning.screening.ScreeningRules;

/**
 * One question of the intake.
 *
 * @param step page on which it is asked, 1 and more
 * @param id name of the answer; of a sign of danger the id of its rule
 * @param values that an answer may have; empty for texts and numbers
 */
public record Question(int step, String id, Kind kind, List<String> values) {
    /** "I do not know", which is not "no". */
    public static final String UNKNOWN = "unknown";

    static final String YES = "yes";

    private static final List<String> YES_NO = List.of(YES, "no", UNKNOWN);

    /** How it is answered. */
    public enum Kind {
        DANGER,
        CHOICE,
        SEVERAL,
        TEXT,
        NUMBER,
        SCALE
    }

    public Question {
        values = kind == Kind.DANGER ? YES_NO : List.copyOf(values);
        if (kind == Kind.DANGER && ScreeningRules.load().find(id).isEmpty()) {
            throw new IllegalArgumentException("a sign of danger is a rule of the screening, was " + id);
        }
        if (values.isEmpty() && (kind == Kind.CHOICE || kind == Kind.SEVERAL)) {
            throw new IllegalArgumentException("question " + id + " needs values");
        }
    }

    /** As the person reads it. */
    public String asked(Words words) {
        return words.get("q." + id);
    }

    /** A value as the person reads it. */
    public String said(String value, Words words) {
        if (value.equals(UNKNOWN) && !words.keys().contains("v." + id + "." + UNKNOWN)) {
            return words.get(UNKNOWN);
        }
        if (kind == Kind.DANGER || values.equals(YES_NO)) {
            return words.get(value);
        }
        if (id.equals("where") && (value.startsWith("l-") || value.startsWith("r-"))) {
            return words.get(value.startsWith("l-") ? "left" : "right") + " " + words.get("area." + value.substring(2));
        }
        return kind == Kind.TEXT || kind == Kind.NUMBER || kind == Kind.SCALE
                ? value
                : words.get("v." + id + "." + value);
    }

    /** The rule of the screening; empty if it is not a sign of danger. */
    public Optional<ScreeningRule> rule() {
        return kind == Kind.DANGER ? ScreeningRules.load().find(id) : Optional.empty();
    }

    /** Whether a yes is an emergency. */
    public boolean emergency() {
        return rule().filter(rule -> rule.level() == Level.EMERGENCY).isPresent();
    }
}
