package slipway.reasoning.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked scores. ODI: 16 of 50 is 32 %, 16 of 45 is printed 35.5 % (exact 35.5556), Oswestry form. DASH: all 30 items 2
 * is (60 - 30) / 1.2 = 25 (aliciapyne.com); QuickDASH and refusals: the published rule, arithmetic. LEFS: ends of the
 * scale (Binkley 1999). RMDQ 12 to 2 is 83 % (yhocphuchoi.com). EARS: ends of the scale; no total with an item missing.
 */
class ScoresReferenceTest {
    private static final double PRINTED_DIGITS = 0.00005;

    @ParameterizedTest(name = "{0}: {1} items of {2}, then {3} of {4}")
    @CsvSource({
        // 16 points over ten sections: six of 1, and two of 5 by way of example
        "odi, 6, 1, 2, 5, 2, 0, 32",
        "odi, 6, 1, 2, 5, 1, 0, 35.5556",
        "dash, 30, 2, 0, 0, 0, 0, 25",
        "dash, 27, 3, 0, 0, 0, 0, 50",
        "quickdash, 11, 1, 0, 0, 0, 0, 0",
        "quickdash, 11, 5, 0, 0, 0, 0, 100",
        "quickdash, 11, 3, 0, 0, 0, 0, 50",
        "quickdash, 10, 3, 0, 0, 0, 0, 50",
        "lefs, 20, 4, 0, 0, 0, 0, 80",
        "lefs, 20, 0, 0, 0, 0, 0, 0",
        "ears, 6, 0, 0, 0, 0, 0, 0",
        "ears, 6, 4, 0, 0, 0, 0, 24",
        "rmdq, 12, 1, 0, 0, 0, 0, 12",
        "rmdq, 0, 0, 0, 0, 0, 0, 0",
        "psfs, 2, 3, 1, 6, 0, 0, 4",
        "sbi, 4, 6, 0, 0, 0, 0, 24",
    })
    void publishedExamplesAreMet(
            String measure, int n1, double a1, int n2, double a2, int n3, double a3, double score) {
        var answers = new TreeMap<Integer, Double>();
        fill(answers, n1, a1);
        fill(answers, n2, a2);
        fill(answers, n3, a3);
        assertThat(Measures.bundled().get(measure).score(answers).find().orElseThrow())
                .isCloseTo(score, within(PRINTED_DIGITS));
    }

    @ParameterizedTest
    @CsvSource({"dash, 26, 2", "quickdash, 9, 3", "ears, 5, 4", "lefs, 19, 4", "odi, 8, 1", "psfs, 2, 5", "pain, 0, 0"})
    void tooFewAnswersMeanNoScore(String measure, int answered, double answer) {
        var answers = new TreeMap<Integer, Double>();
        fill(answers, answered, answer);
        assertThat(Measures.bundled().get(measure).score(answers)).isInstanceOfSatisfying(Score.NotScored.class, no -> {
            assertThat(no.reasons()).singleElement().asString().contains("must be answered, " + answered + " were");
        });
    }

    @Test
    void allMistakesOfAnswersAreToldAtOnce() {
        var answers = new TreeMap<Integer, Double>();
        answers.put(0, 1.0);
        answers.put(2, 7.0);
        answers.put(3, Double.NaN);
        assertThat(Measures.bundled().get("odi").score(answers)).isInstanceOfSatisfying(Score.NotScored.class, no -> {
            assertThat(no.reasons()).hasSize(4);
        });
    }

    private static void fill(Map<Integer, Double> answers, int count, double answer) {
        for (int i = 0; i < count; i++) {
            answers.put(answers.size() + 1, answer);
        }
    }
}
