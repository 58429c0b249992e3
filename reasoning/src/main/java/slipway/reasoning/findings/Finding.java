package slipway.reasoning.findings;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Result.Grade;
import slipway.reasoning.findings.Result.Word;

/**
 * One result of one examination item on one side. What was not tested has no finding; absence never means normal.
 *
 * @param kind the kind of item
 * @param target the item as the examiner named it, for example {@code ankle_dorsiflexors}; whether it is known is a
 *     question for {@link Vocabulary}
 * @param side the side tested
 * @param result what it showed
 * @param degrees the joint angle at which a provocation test answered, if it was measured
 * @param location where it was written, for messages, for example {@code line 31}; may be empty
 */
public record Finding(
        FindingKind kind, String target, Side side, Result result, OptionalDouble degrees, String location) {
    private static final Map<FindingKind, Set<Word>> WORDS = new EnumMap<>(Map.of(
            FindingKind.STRENGTH, EnumSet.of(Word.NORMAL, Word.REDUCED, Word.ABSENT),
            FindingKind.REFLEX, EnumSet.of(Word.NORMAL, Word.REDUCED, Word.ABSENT, Word.INCREASED),
            FindingKind.SENSATION, EnumSet.of(Word.NORMAL, Word.REDUCED, Word.ABSENT, Word.INCREASED),
            FindingKind.PROVOCATION, EnumSet.of(Word.POSITIVE, Word.NEGATIVE),
            FindingKind.SYMPTOM, EnumSet.of(Word.PAIN, Word.TINGLING, Word.NUMB, Word.WEAKNESS, Word.NONE)));

    public Finding {
        if (target.isBlank()) {
            throw new IllegalArgumentException("a finding needs the name of what was tested" + at(location));
        }
        if (!allowed(kind, result)) {
            throw new IllegalArgumentException(
                    "%s of %s cannot be \"%s\"%s".formatted(kind.key(), target, result.text(), at(location)));
        }
        if (degrees.isPresent() && !(degrees.getAsDouble() >= -60 && degrees.getAsDouble() <= 180)) {
            throw new IllegalArgumentException("angle of %s must be within -60 and 180 deg, was %s%s"
                    .formatted(target, degrees.getAsDouble(), at(location)));
        }
    }

    /** A finding without angle and without a place in a file. */
    public static Finding of(FindingKind kind, String target, Side side, Result result) {
        return new Finding(kind, target, side, result, OptionalDouble.empty(), "");
    }

    /** The same finding on the other side. */
    public Finding mirrored() {
        return new Finding(kind, target, side.opposite(), result, degrees, location);
    }

    /** Kind, target, side and result in words, for example {@code strength of ankle dorsiflexors left: 3}. */
    public String text() {
        return "%s of %s %s: %s"
                .formatted(
                        kind.key(),
                        target.replace('_', ' '),
                        side.name().toLowerCase(java.util.Locale.ROOT),
                        result.text());
    }

    private static boolean allowed(FindingKind kind, Result result) {
        if (result instanceof Word word) {
            return WORDS.getOrDefault(kind, Set.of()).contains(word);
        }
        return kind == FindingKind.STRENGTH && result instanceof Grade;
    }

    private static String at(String location) {
        return location.isEmpty() ? "" : " (" + location + ")";
    }
}
