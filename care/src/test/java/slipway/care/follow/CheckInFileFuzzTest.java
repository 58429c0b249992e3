package slipway.care.follow;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import slipway.exercises.yaml.MistakesException;

/** Whatever stands in a file of check-ins, all of it can be used or its mistakes are named. Runs the committed inputs. */
class CheckInFileFuzzTest {
    private static final List<String> EXERCISES = List.of("glide-knee-lying", "glide-ankle-lying");

    @FuzzTest(maxDuration = "60s")
    void isAFileOfCheckInsOrNamesItsMistakes(byte[] bytes) {
        try {
            assertThat(CheckInFile.read("fuzzed.csv", bytes, EXERCISES))
                    .allMatch(each -> EXERCISES.contains(each.exercise()));
        } catch (MistakesException e) {
            assertThat(e.mistakes()).isNotEmpty();
            assertThat(e.getMessage()).isNotBlank();
        }
    }
}
