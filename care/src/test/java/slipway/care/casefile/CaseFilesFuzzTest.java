package slipway.care.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import slipway.exercises.yaml.MistakesException;

/**
 * Whatever stands in a file, it is a case or its mistakes are named. Runs the committed inputs; with {@code JAZZER_FUZZ=1} it looks for new ones, which are
 * kept beside them when something breaks.
 */
class CaseFilesFuzzTest {
    @FuzzTest(maxDuration = "60s")
    void isACaseOrNamesItsMistakes(byte[] bytes) {
        try {
            assertThat(CaseFiles.read(bytes, "fuzzed.yaml")).isNotNull();
        } catch (MistakesException e) {
            assertThat(e.getMessage()).isNotBlank();
        }
    }
}
