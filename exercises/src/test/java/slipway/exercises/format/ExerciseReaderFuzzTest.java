package slipway.exercises.format;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import slipway.exercises.yaml.MistakesException;

/**
 * Whatever stands in a file, it is an exercise or its mistakes are named. Runs the committed inputs; with {@code JAZZER_FUZZ=1} it looks for new ones, which are
 * kept beside them when something breaks.
 */
class ExerciseReaderFuzzTest {
    @FuzzTest(maxDuration = "60s")
    void isAnExerciseOrNamesItsMistakes(byte[] bytes) {
        try {
            assertThat(ExerciseReader.read("fuzzed.yaml", bytes)).isNotNull();
        } catch (MistakesException e) {
            assertThat(e.getMessage()).isNotBlank();
        }
    }
}
