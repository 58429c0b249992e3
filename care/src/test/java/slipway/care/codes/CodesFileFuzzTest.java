package slipway.care.codes;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import slipway.exercises.yaml.MistakesException;
import slipway.reasoning.codes.CodeEntry;
import slipway.reasoning.codes.CodeExclusion;
import slipway.reasoning.codes.CodeSet;

/** Whatever stands in a file of codes, it is a list that reads back the same or its mistakes are named. Runs the committed inputs. */
class CodesFileFuzzTest {
    @FuzzTest(maxDuration = "60s")
    void isAListOfCodesOrNamesItsMistakes(byte[] bytes) {
        try {
            List<CodeEntry> codes = CodesFile.codes("fuzzed.csv", bytes);
            assertThat(new CodeSet(codes, List.of()).entries()).hasSameSizeAs(codes);
            assertThat(CodesFile.codes("again.csv", CodesFile.codesFile(codes))).isEqualTo(codes);
        } catch (MistakesException e) {
            named(e);
        }
        try {
            List<CodeExclusion> exclusions = CodesFile.exclusions("fuzzed.csv", bytes);
            assertThat(CodesFile.exclusions("again.csv", CodesFile.exclusionsFile(exclusions)))
                    .isEqualTo(exclusions);
        } catch (MistakesException e) {
            named(e);
        }
    }

    private static void named(MistakesException e) {
        assertThat(e.mistakes()).isNotEmpty();
        assertThat(e.getMessage()).isNotBlank();
    }
}
