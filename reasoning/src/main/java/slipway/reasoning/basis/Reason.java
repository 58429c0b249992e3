package slipway.reasoning.basis;

import java.util.ArrayList;
import java.util.List;

/**
 * Why a result is what it is.
 *
 * @param rule stable id, for example {@code guard.below-onset}
 * @param text one English sentence
 * @param numbers what the sentence rests on, in its order
 * @param source where the rule or its number comes from
 * @param mark {@code seen}, {@code memory}, {@code common practice}, {@code assumption}, or {@code finding} for what
 *     this person's examination showed
 */
public record Reason(String rule, String text, List<Quantity> numbers, String source, String mark) {
    public Reason {
        if (rule.isBlank() || text.isBlank()) {
            throw new IllegalArgumentException("a reason needs a rule id and a sentence, was \"" + rule + "\"");
        }
        numbers = List.copyOf(numbers);
    }

    /** A reason that comes from this person's examination. */
    public static Reason finding(String rule, String text) {
        return new Reason(rule, text, List.of(), "this person's examination", "finding");
    }

    /** A reason that applies a coefficient, which is its first number. */
    public static Reason by(Coefficient coefficient, String rule, String text) {
        return new Reason(
                rule,
                text,
                List.of(new Quantity(coefficient.id(), coefficient.value(), coefficient.unit())),
                coefficient.source(),
                coefficient.mark());
    }

    /** A reason that rests on a way of working rather than on a number. */
    public static Reason practice(String rule, String text) {
        return new Reason(rule, text, List.of(), "common practice, no published source", "common practice");
    }

    /** This reason with one more number. */
    public Reason with(String name, double value, String unit) {
        var more = new ArrayList<>(numbers);
        more.add(new Quantity(name, value, unit));
        return new Reason(rule, text, more, source, mark);
    }
}
