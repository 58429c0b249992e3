package slipway.reasoning.findings;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import slipway.reasoning.findings.Result.Grade;
import slipway.reasoning.findings.Result.Word;

/** Reads a result as an examiner writes it: {@code 4+}, {@code 3/5}, {@code brisk}, {@code tingling}, {@code true}. */
public final class ResultReader {
    private static final Pattern GRADE = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?:/\\s*5)?\\s*([+-]?)\\s*(?:/\\s*5)?");

    private static final Map<String, Word> COMMON = Map.ofEntries(
            Map.entry("normal", Word.NORMAL),
            Map.entry("intact", Word.NORMAL),
            Map.entry("full", Word.NORMAL),
            Map.entry("reduced", Word.REDUCED),
            Map.entry("decreased", Word.REDUCED),
            Map.entry("diminished", Word.REDUCED),
            Map.entry("weak", Word.REDUCED),
            Map.entry("impaired", Word.REDUCED),
            Map.entry("altered", Word.REDUCED),
            Map.entry("abnormal", Word.REDUCED),
            Map.entry("absent", Word.ABSENT),
            Map.entry("lost", Word.ABSENT),
            Map.entry("paralysed", Word.ABSENT),
            Map.entry("paralyzed", Word.ABSENT),
            Map.entry("increased", Word.INCREASED),
            Map.entry("brisk", Word.INCREASED),
            Map.entry("exaggerated", Word.INCREASED),
            Map.entry("clonus", Word.INCREASED),
            Map.entry("allodynia", Word.INCREASED),
            Map.entry("hypersensitive", Word.INCREASED),
            Map.entry("hyperaesthesia", Word.INCREASED),
            Map.entry("hyperesthesia", Word.INCREASED),
            Map.entry("dysaesthesia", Word.INCREASED),
            Map.entry("dysesthesia", Word.INCREASED),
            Map.entry("hyperalgesia", Word.INCREASED),
            Map.entry("hyperactive", Word.INCREASED),
            Map.entry("hyperreflexia", Word.INCREASED),
            Map.entry("upgoing", Word.INCREASED),
            Map.entry("present", Word.NORMAL),
            Map.entry("strong", Word.NORMAL),
            Map.entry("symmetric", Word.NORMAL),
            Map.entry("downgoing", Word.NORMAL),
            Map.entry("flexor", Word.NORMAL),
            Map.entry("hypoactive", Word.REDUCED),
            Map.entry("hyporeflexia", Word.REDUCED),
            Map.entry("sluggish", Word.REDUCED),
            Map.entry("weakened", Word.REDUCED),
            Map.entry("weakness", Word.REDUCED),
            Map.entry("mildly reduced", Word.REDUCED),
            Map.entry("mild weakness", Word.REDUCED),
            Map.entry("hypoaesthesia", Word.REDUCED),
            Map.entry("hypoesthesia", Word.REDUCED),
            Map.entry("hypaesthesia", Word.REDUCED),
            Map.entry("dull", Word.REDUCED),
            Map.entry("numb", Word.REDUCED),
            Map.entry("numbness", Word.REDUCED),
            Map.entry("tingling", Word.REDUCED),
            Map.entry("paraesthesia", Word.REDUCED),
            Map.entry("paresthesia", Word.REDUCED),
            Map.entry("anaesthesia", Word.ABSENT),
            Map.entry("anesthesia", Word.ABSENT),
            Map.entry("areflexia", Word.ABSENT),
            Map.entry("paralysis", Word.ABSENT),
            Map.entry("none", Word.ABSENT));

    /** Grades of reflexes as numbers: 0 absent, 1 diminished, 2 normal, 3 and 4 brisk (evidence 6). */
    private static final Map<String, Word> REFLEX_NUMBERS = Map.of(
            "0", Word.ABSENT,
            "1", Word.REDUCED,
            "1+", Word.REDUCED,
            "2", Word.NORMAL,
            "2+", Word.NORMAL,
            "3", Word.INCREASED,
            "3+", Word.INCREASED,
            "4", Word.INCREASED,
            "4+", Word.INCREASED);

    private static final Map<String, Double> GRADE_WORDS = Map.of("flicker", 1.0, "trace", 1.0);

    private static final Pattern GRADE_RANGE = Pattern.compile("([0-4])\\s*(?:-|to)\\s*([1-5])(?:\\s*/\\s*5)?");

    private static final Map<String, Word> PROVOCATION = Map.ofEntries(
            Map.entry("positive", Word.POSITIVE),
            Map.entry("true", Word.POSITIVE),
            Map.entry("yes", Word.POSITIVE),
            Map.entry("negative", Word.NEGATIVE),
            Map.entry("false", Word.NEGATIVE),
            Map.entry("no", Word.NEGATIVE),
            Map.entry("normal", Word.NEGATIVE));

    private static final Map<String, Word> SYMPTOM = Map.ofEntries(
            Map.entry("pain", Word.PAIN),
            Map.entry("burning", Word.PAIN),
            Map.entry("ache", Word.PAIN),
            Map.entry("painful", Word.PAIN),
            Map.entry("cramp", Word.PAIN),
            Map.entry("stiff", Word.PAIN),
            Map.entry("tingling", Word.TINGLING),
            Map.entry("paraesthesia", Word.TINGLING),
            Map.entry("paresthesia", Word.TINGLING),
            Map.entry("pins and needles", Word.TINGLING),
            Map.entry("allodynia", Word.TINGLING),
            Map.entry("numb", Word.NUMB),
            Map.entry("numbness", Word.NUMB),
            Map.entry("weak", Word.WEAKNESS),
            Map.entry("weakness", Word.WEAKNESS),
            Map.entry("tired", Word.WEAKNESS),
            Map.entry("none", Word.NONE),
            Map.entry("no", Word.NONE),
            Map.entry("normal", Word.NONE),
            Map.entry("false", Word.NONE));

    private ResultReader() {}

    /**
     * The result that a text means for this kind of item; empty if the text means none.
     *
     * @throws IllegalArgumentException if it is a grade outside 0 to 5
     */
    public static Optional<Result> read(FindingKind kind, String text) {
        String word = text.strip().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        return switch (kind) {
            case STRENGTH -> strength(word);
            case REFLEX -> Optional.ofNullable(REFLEX_NUMBERS.getOrDefault(word, COMMON.get(word)));
            case SENSATION -> Optional.ofNullable(COMMON.get(word));
            case PROVOCATION -> Optional.ofNullable(PROVOCATION.get(word));
            case SYMPTOM -> Optional.ofNullable(SYMPTOM.get(word));
        };
    }

    private static Optional<Result> strength(String word) {
        var range = GRADE_RANGE.matcher(word);
        if (range.matches()) {
            double low = Double.parseDouble(range.group(1));
            double high = Double.parseDouble(range.group(2));
            return low < high ? Optional.of(new Grade((low + high) / 2)) : Optional.empty();
        }
        Double named = GRADE_WORDS.get(word);
        if (named != null) {
            return Optional.of(new Grade(named));
        }
        var grade = GRADE.matcher(word);
        if (!grade.matches()) {
            return Optional.<Result>ofNullable(COMMON.get(word)).filter(found -> found != Word.INCREASED);
        }
        double value = Double.parseDouble(grade.group(1));
        double shade = grade.group(2).isEmpty() ? 0 : (grade.group(2).equals("+") ? 1.0 / 3 : -1.0 / 3);
        // 5- is a shade below full strength, 5+ means nothing more than full strength, 0- nothing less than none.
        return Optional.of(new Grade(value > 5 || value < 0 ? value : Math.min(5, Math.max(0, value + shade))));
    }
}
