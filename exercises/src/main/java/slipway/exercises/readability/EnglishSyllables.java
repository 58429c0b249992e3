package slipway.exercises.readability;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import slipway.mechanics.evidence.BundledTable;

/**
 * Counts the syllables of an English word: groups of vowels, less the silent ones, plus the pairs that are spoken apart;
 * words that the rules miscount are listed. English spelling allows no exact rule; the test states how often it is right.
 */
final class EnglishSyllables {
    private static final Pattern GROUP = Pattern.compile("[aeiouy]+");
    /** An e at the end, or before s or d, that is not spoken: make, makes, moved; but not table, roses, lifted, glided. */
    private static final Pattern SILENT = Pattern.compile(
            "[^aeiouyl]e$|[aeiouy]le$|[gq]ues?$|[^aeiouyscxzghl]es$|[aeiouy][lh]es$|the?s$|[^aeiouytdl]ed$|[aeiouyrl]led$");
    /** A silent e before an ending: movement, lately, useful, careless, awareness, someone, sometimes. */
    private static final Pattern SILENT_INSIDE = Pattern.compile(
            "[aeiouy][^aeiouyl]+e(ments?|ly|ful|ful?ly|less|ness)$|[aeiou]le(ly|ss|ness)$|(some|every)(one|thing|time|what|where|how|body)s?$");
    /** Vowels that stand together and are spoken apart: area, client, giant, radius, video, doing, player, carrier. */
    private static final Pattern APART = Pattern.compile(
            "[^tscgxl]ia(?!ge)|lia(?![nr])|(?<!ll)(?<=[^aeioutscgx])io(?!u)|[^tscgx]iou|(?<![tcr])ie(t|n(?!d))|scien|socie|rient|riet|(?<=[^t])i(er|est)$|ium|ius|"
                    + "(?<!g)eo(?!p|u)|idea|^area|creat(?!ure)|react|theat|[aeiouy]ing|(?<![gq])ua|[^gq]ue[lt]|sm$|yi"
                    + "|(?<!^)[aeou]y[aeo](?!$|d)");

    private static final Map<String, Integer> EXCEPTIONS = load();

    private EnglishSyllables() {}

    static int count(String word) {
        String letters = word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
        Integer listed = EXCEPTIONS.get(letters);
        if (listed != null) {
            return listed;
        }
        int groups = (int) GROUP.matcher(letters).results().count();
        int silent = groups > 1 && SILENT.matcher(letters).find() ? 1 : 0;
        silent += SILENT_INSIDE.matcher(letters).find() ? 1 : 0;
        int apart = (int) APART.matcher(letters).results().count();
        return Math.max(1, groups - silent + apart);
    }

    private static Map<String, Integer> load() {
        String name = "/slipway/exercises/syllable-exceptions-en.csv";
        try (var stream = EnglishSyllables.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without " + name);
            }
            var exceptions = new HashMap<String, Integer>();
            BundledTable.parseText(new String(stream.readAllBytes(), StandardCharsets.UTF_8))
                    .forEach(row -> exceptions.put(row.get("word"), Integer.valueOf(row.get("syllables"))));
            return Map.copyOf(exceptions);
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled table " + name + " cannot be read", e);
        }
    }
}
