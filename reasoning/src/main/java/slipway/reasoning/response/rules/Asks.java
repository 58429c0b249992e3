package slipway.reasoning.response.rules;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a rule asks for besides its decision.
 *
 * @param rungsDown rungs to go down from the dose that the report is on
 * @param resumeDown rungs below the dose in force at which a break is followed; that is where the session was done
 * @param halfRange whether the range is to be at most half of that dose's
 * @param onceADay whether it is to be done once a day
 * @param slower whether it is to be done slower
 * @param noStepDays days without a step up
 * @param barDays days for which the rung that failed is barred
 * @param contact who has to speak with whom
 */
public record Asks(
        int rungsDown,
        int resumeDown,
        boolean halfRange,
        boolean onceADay,
        boolean slower,
        int noStepDays,
        int barDays,
        Contact contact) {
    /** Nothing. */
    public static final Asks NOTHING = new Asks(0, 0, false, false, false, 0, 0, Contact.NONE);

    private static final Set<String> KNOWN =
            Set.of("rungs-down", "resume-down", "half-range", "once-a-day", "slower", "no-step-days", "bar-days");

    public Asks {
        if (rungsDown < 0 || resumeDown < 0 || noStepDays < 0 || barDays < 0) {
            throw new IllegalArgumentException("a rule must not ask for less than nothing");
        }
    }

    static Asks read(Map<String, String> words, Contact contact) {
        var unknown = new TreeSet<>(words.keySet());
        unknown.removeAll(KNOWN);
        if (!unknown.isEmpty()) {
            throw new IllegalStateException("unknown effects " + unknown);
        }
        return new Asks(
                number(words, "rungs-down"),
                number(words, "resume-down"),
                words.containsKey("half-range"),
                words.containsKey("once-a-day"),
                words.containsKey("slower"),
                number(words, "no-step-days"),
                number(words, "bar-days"),
                contact);
    }

    private static int number(Map<String, String> words, String key) {
        return Integer.parseInt(words.getOrDefault(key, "0"));
    }

    /** What both ask for: of each the more careful. */
    public Asks and(Asks other) {
        return new Asks(
                Math.max(rungsDown, other.rungsDown),
                Math.max(resumeDown, other.resumeDown),
                halfRange || other.halfRange,
                onceADay || other.onceADay,
                slower || other.slower,
                Math.max(noStepDays, other.noStepDays),
                Math.max(barDays, other.barDays),
                contact.orMoreUrgent(other.contact));
    }
}
