package slipway.exercises.readability;

import java.util.Locale;

/**
 * Counts the syllables of a Spanish word by the rules of the orthography: each vowel opens one, unless it forms a
 * diphthong or triphthong. Two open vowels (a, e, o) stand apart; an accented i or u stands apart from an open vowel; an
 * h between vowels changes nothing, but hue and hie open a syllable; the u of que, qui, gue, gui is silent.
 */
final class SpanishSyllables {
    private static final String OPEN = "aeoáéó";
    private static final String CLOSED_STRESSED = "íú";
    private static final String CLOSED = "iuü";

    private SpanishSyllables() {}

    static int count(String word) {
        String letters = word.toLowerCase(Locale.forLanguageTag("es"))
                .replaceAll("[^a-záéíóúüñ]", "")
                .replaceAll("(?<=q)u(?=[eiéí])|(?<=g)u(?=[eiéí])", "")
                .replaceAll("y(?![aeiouáéíóú])", "i")
                .replaceAll("(?<=[aeiouáéíóúü])h(?![iu][aeoáéó])(?=[aeiouáéíóúü])", "");
        int syllables = 0;
        char before = ' ';
        for (int i = 0; i < letters.length(); i++) {
            char letter = letters.charAt(i);
            if (isVowel(letter) && !(isVowel(before) && joins(before, letter))) {
                syllables++;
            }
            before = letter;
        }
        return Math.max(1, syllables);
    }

    private static boolean isVowel(char letter) {
        return OPEN.indexOf(letter) >= 0 || CLOSED_STRESSED.indexOf(letter) >= 0 || CLOSED.indexOf(letter) >= 0;
    }

    /** Whether two vowels that follow each other are one syllable. */
    private static boolean joins(char first, char second) {
        boolean bothOpen = OPEN.indexOf(first) >= 0 && OPEN.indexOf(second) >= 0;
        boolean apart = (CLOSED_STRESSED.indexOf(first) >= 0 && OPEN.indexOf(second) >= 0)
                || (OPEN.indexOf(first) >= 0 && CLOSED_STRESSED.indexOf(second) >= 0)
                || first == second;
        return !bothOpen && !apart;
    }
}
