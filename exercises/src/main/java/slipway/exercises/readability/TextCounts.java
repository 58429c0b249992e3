package slipway.exercises.readability;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import slipway.exercises.exercise.Language;

/**
 * What readability formulas count in a text.
 *
 * @param words 1 or more
 * @param sentences 1 or more
 * @param syllables at least as many as words
 * @param polysyllables words of three syllables or more
 */
public record TextCounts(int words, int sentences, int syllables, int polysyllables) {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+(?:['’][\\p{L}]+)*");
    private static final Pattern SENTENCE_END = Pattern.compile("[.!?…:]+(?=\\s|$)");

    public TextCounts {
        if (words < 1 || sentences < 1 || syllables < words || polysyllables < 0 || polysyllables > words) {
            throw new IllegalArgumentException(
                    "a text has at least one word and one sentence, was %d words, %d sentences, %d syllables, %d long words"
                            .formatted(words, sentences, syllables, polysyllables));
        }
    }

    /**
     * The counts of texts that each end a sentence. Headings and names do not belong in: they are no sentences and
     * spoil the score.
     *
     * @throws IllegalArgumentException if there is no word in them
     */
    public static TextCounts of(Language language, List<String> texts) {
        int words = 0;
        int sentences = 0;
        int syllables = 0;
        int polysyllables = 0;
        for (String text : texts) {
            var found = WORD.matcher(text).results().map(MatchResult::group).toList();
            for (String word : found) {
                int count = syllables(language, word);
                syllables += count;
                polysyllables += count >= 3 ? 1 : 0;
            }
            words += found.size();
            sentences += found.isEmpty() ? 0 : sentencesIn(text);
        }
        return new TextCounts(words, sentences, syllables, polysyllables);
    }

    private static int sentencesIn(String text) {
        long ends = SENTENCE_END.matcher(text).results().count();
        boolean open = !text.strip().matches("(?s).*[.!?…:]$");
        return (int) ends + (open ? 1 : 0);
    }

    /** Syllables of one word; a number counts as one per digit, for want of a better rule. */
    public static int syllables(Language language, String word) {
        if (word.chars().allMatch(Character::isDigit)) {
            return word.length();
        }
        return switch (language) {
            case EN -> EnglishSyllables.count(word);
            case ES -> SpanishSyllables.count(word);
        };
    }
}
