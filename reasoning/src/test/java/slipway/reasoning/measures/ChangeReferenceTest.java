package slipway.reasoning.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Changes around published limits: pain 2 (Ostelo 2008) with MDC 1.77; RMDQ 5 with MDC90 4-5 (Ostelo 2008, Stratford
 * 1996); ODI 10; LEFS MDC90 = MCID = 9 (Binkley 1999); PSFS MDC90 2 for the mean, 3 for one activity.
 */
class ChangeReferenceTest {
    @ParameterizedTest(name = "{0} from {1} to {2}")
    @CsvSource({
        "pain, 6, 4, IMPORTANT, 2",
        "pain, 6, 4.5, WITHIN_ERROR, 1.5",
        "pain, 6, 4.2, IMPORTANT, 1.8",
        "pain, 8, 6.2, REAL, 1.8",
        "pain, 4, 6, IMPORTANT, -2",
        "rmdq, 12, 2, IMPORTANT, 10",
        "rmdq, 12, 8, WITHIN_ERROR, 4",
        "rmdq, 12, 7, IMPORTANT, 5",
        "odi, 40, 31, WITHIN_ERROR, 9",
        "odi, 40, 30, IMPORTANT, 10",
        "lefs, 40, 48, WITHIN_ERROR, 8",
        "lefs, 40, 49, IMPORTANT, 9",
        "psfs, 3, 4.9, WITHIN_ERROR, 1.9",
        "psfs, 3, 5, IMPORTANT, 2",
        "psfs-activity, 3, 5, WITHIN_ERROR, 2",
        "psfs-activity, 3, 6, REAL, 3",
        "dash, 50, 39.5, WITHIN_ERROR, 10.5",
        "dash, 50, 39.2, IMPORTANT, 10.8",
        "slr, 40, 51, WITHIN_ERROR, 11",
        "slr, 40, 52, REAL, 12",
        "sbi, 15, 9.5, REAL, 5.5",
        "groc, 0, 3, IMPORTANT, 3",
        "groc, 0, 2, NOT_KNOWN, 2",
        "ears, 10, 20, NOT_KNOWN, 10",
    })
    void changeIsNamedWithItsNumbers(String id, double from, double to, Change.Kind kind, double gain) {
        Change change = Measures.bundled().get(id).change(from, to);
        assertThat(change.kind()).isEqualTo(kind);
        assertThat(change.gain()).isCloseTo(gain, within(1e-9));
        assertThat(change.reasons())
                .isNotEmpty()
                .allSatisfy(reason -> assertThat(reason.source()).isNotBlank());
    }

    @Test
    void shareOfTheStartIsThePublishedOne() {
        // RMDQ 12 to 2: 83 % (yhocphuchoi.com); 10 / 12
        assertThat(Measures.bundled().get("rmdq").change(12, 2).share()).isCloseTo(0.833, within(0.0005));
        assertThat(Measures.bundled()
                        .get("rmdq")
                        .thresholds()
                        .recovered()
                        .orElseThrow()
                        .value())
                .isEqualTo(2);
    }

    @Test
    void endsOfTheRolandMorrisScaleAreNamed() {
        assertThat(Measures.bundled().get("rmdq").change(3, 0).reasons())
                .anyMatch(reason -> reason.text().contains("improvement can't be told"));
        assertThat(Measures.bundled().get("rmdq").change(21, 24).reasons())
                .anyMatch(reason -> reason.text().contains("worsening can't be told"));
        assertThat(Measures.bundled().get("rmdq").change(20, 4).reasons())
                .noneMatch(reason -> reason.text().contains("can't be told"));
    }

    @Test
    void aTotalOutsideTheScaleIsRefused() {
        assertThatThrownBy(() -> Measures.bundled().get("lefs").change(40, 81))
                .hasMessage("Lower Extremity Functional Scale must be within 0 and 80, was 81");
        assertThatThrownBy(() -> Measures.bundled().get("pain").change(Double.NaN, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void wordingIsThereOnlyWhereNobodyOwnsIt() {
        assertThat(Measures.bundled()
                        .findQuestion("pain", 1, "es")
                        .orElseThrow()
                        .reviewed())
                .isFalse();
        for (String owned : new String[] {"rmdq", "odi", "lefs", "dash", "quickdash", "sbi", "ears"}) {
            assertThat(Measures.bundled().findQuestion(owned, 1, "en")).isEmpty();
        }
        assertThat(Measures.bundled().list())
                .allSatisfy(measure -> assertThat(measure.basis().rights()).isNotBlank());
    }
}
