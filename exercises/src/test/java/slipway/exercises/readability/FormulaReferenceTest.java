package slipway.exercises.readability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipway.exercises.exercise.Language;

/** Scores against published and worked examples; counts are fed, so that the syllable counter plays no part. */
class FormulaReferenceTest {
    /** Half a unit of the last digit that the examples print. */
    private static final double FOURTH_DIGIT = 0.00005;

    private static final double THIRD_DIGIT = 0.0005;

    /** Worked examples known from encyclopaedias (from memory), scores by the printed formulas. */
    @ParameterizedTest
    @CsvSource({"6,1,6,116.145,-1.45", "16,1,23,68.9825,7.6125", "13,1,24,37.4554,11.2646", "1,1,1,121.22,-3.40"})
    void fleschAndKincaid(int words, int sentences, int syllables, double ease, double grade) {
        assertThat(Formula.FLESCH_EASE.score(words, sentences, syllables, 0)).isCloseTo(ease, within(FOURTH_DIGIT));
        assertThat(Formula.FLESCH_KINCAID.score(words, sentences, syllables, 0)).isCloseTo(grade, within(FOURTH_DIGIT));
    }

    /** Averages 5.7 words a sentence and 1.02 syllables a word give -1.3 (movingowee.blogspot.com, 2007-06). */
    @Test
    void kincaidOfAChildrensBook() {
        assertThat(Formula.FLESCH_KINCAID.score(5.7, 1, 5.7 * 1.02, 0)).isCloseTo(-1.331, within(THIRD_DIGIT));
    }

    /** 64 long words in 30 sentences are graded 11 by the quick form (strainindex.wordpress.com, 2010-04). */
    @ParameterizedTest
    @CsvSource({"0,30,3.1291", "30,30,8.8418", "64,30,11.4731", "90,30,13.0239", "6,5,9.3871"})
    void smog(int polysyllables, int sentences, double grade) {
        assertThat(Formula.SMOG.score(300, sentences, 400, polysyllables)).isCloseTo(grade, within(FOURTH_DIGIT));
    }

    /** The misprinted Fernández Huerta formula would give 81.74 for the first row. */
    @ParameterizedTest
    @CsvSource({"100,5,200,66.44,62.235", "4,1,8,82.76,78.235"})
    void spanish(int words, int sentences, int syllables, double huerta, double inflesz) {
        assertThat(Formula.FERNANDEZ_HUERTA.score(words, sentences, syllables, 0))
                .isCloseTo(huerta, within(FOURTH_DIGIT));
        assertThat(Formula.INFLESZ.score(words, sentences, syllables, 0)).isCloseTo(inflesz, within(FOURTH_DIGIT));
    }

    @Test
    void countsTheExampleTextsAsPrinted() {
        assertThat(TextCounts.of(Language.EN, List.of("The cat sat on the mat.")))
                .isEqualTo(new TextCounts(6, 1, 6, 0));
        assertThat(
                        TextCounts.of(
                                Language.EN,
                                List.of(
                                        "This sentence, taken as a reading passage unto itself, is being used to prove a point.")))
                .extracting(TextCounts::words, TextCounts::sentences, TextCounts::syllables)
                .containsExactly(16, 1, 23);
        assertThat(TextCounts.of(
                        Language.EN,
                        List.of("The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.")))
                .isEqualTo(new TextCounts(13, 1, 24, 4));
        assertThat(TextCounts.of(Language.ES, List.of("El gato come pescado."))).isEqualTo(new TextCounts(4, 1, 8, 1));
    }
}
