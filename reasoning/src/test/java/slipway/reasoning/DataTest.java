package slipway.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.reasoning.basis.Coefficients;

/** Every number that a dose follows from says where it comes from. */
class DataTest {
    @ParameterizedTest
    @ValueSource(strings = {"tolerance.csv", "dose.csv", "irritability.csv"})
    void everyCoefficientHasAMarkAndASource(String file) {
        assertThat(Coefficients.load(file).all()).isNotEmpty().allSatisfy(row -> {
            assertThat(row.mark()).isIn("seen", "memory", "common practice", "assumption");
            assertThat(row.source()).hasSizeGreaterThan(20);
            if (row.mark().equals("seen")) {
                // A seen number names a paper by its year.
                assertThat(row.source()).containsPattern("(19|20)\\d\\d");
            }
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"start-rules.csv", "path.csv", "ladder.csv"})
    void everyRowOfTheOtherTablesHasAMark(String file) {
        assertThat(ReasoningData.table(file))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.get("mark")).isIn("seen", "common practice", "assumption"));
    }
}
