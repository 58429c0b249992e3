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
            Map.entry("hypersensitive", Word.INCREASED));

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
            case REFLEX, SENSATION -> Optional.ofNullable(COMMON.get(word));
            case PROVOCATION -> Optional.ofNullable(PROVOCATION.get(word));
            case SYMPTOM -> Optional.ofNullable(SYMPTOM.get(word));
        };
    }

    private static Optional<Result> strength(String word) {
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
