package slipway.reasoning.screening;

import java.util.List;

/**
 * One rule of the screening.
 *
 * @param id camelCase name, also the key of its question in a case file, for example {@code saddleNumbness}
 * @param trigger what makes it match
 * @param level level that it raises; a rule with {@code noGlides} raises CAUTION and allows other care only
 * @param action by when to act, what is still allowed
 * @param fixed whether it can never be switched off
 * @param dose what it changes in a dose, as names that the dose rules read ({@code skinCheck}, {@code noEndRange})
 * @param words plain words
 * @param basis where it comes from
 */
public record ScreeningRule(
        String id,
        Trigger trigger,
        Level level,
        Action action,
        boolean fixed,
        List<String> dose,
        Words words,
        Basis basis) {
    /** By when to act, and what is allowed until then. */
    public record Action(ActWithin actWithin, Allows allows) {}

    /** Source and how far it was seen: S read, M from memory, common practice, assumption. */
    public record Basis(String source, String mark) {}

    public ScreeningRule {
        if (!id.matches("[a-z][A-Za-z0-9]*")) {
            throw new IllegalArgumentException("a rule id must be camelCase, was \"%s\"".formatted(id));
        }
        if (level == Level.INCOMPLETE || level == Level.CLEAR) {
            throw new IllegalArgumentException("rule %s cannot raise the level %s".formatted(id, level.key()));
        }
        dose = List.copyOf(dose);
    }

    /** Whether it is asked of the person. */
    public boolean isQuestion() {
        return trigger instanceof Trigger.Question;
    }

    /** Whether its answer is a required key of a case file about this limb: every emergency and urgent question is. */
    public boolean requiredFor(Region limb) {
        return level.compareTo(Level.URGENT) <= 0
                && trigger instanceof Trigger.Question question
                && question.region().concerns(limb);
    }
}
