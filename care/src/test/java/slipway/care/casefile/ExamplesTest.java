package slipway.care.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import slipway.reasoning.screening.Level;
import slipway.reasoning.screening.Screening;

/** The examples that ship with the program read without mistakes and are marked for what they are. */
class ExamplesTest {
    private static final Path FOLDER = Path.of("..", "examples");

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void readsAndIsNamedLikeItsFile(Path file) throws IOException {
        CaseFile example = CaseFiles.read(Files.readAllBytes(file), file.toString());
        assertThat(example.id() + ".yaml").isEqualTo(file.getFileName().toString());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void isMarkedInventedOrNamesItsSource(Path file) throws IOException {
        CaseFile example = CaseFiles.read(Files.readAllBytes(file), file.toString());
        if (example.provenance().invented()) {
            assertThat(example.patient().name())
                    .hasValueSatisfying(name -> assertThat(name).contains("(invented)"));
        } else {
            assertThat(example.provenance().source())
                    .hasValueSatisfying(source -> assertThat(source).contains("http"));
            assertThat(example.provenance().inventedParts()).contains("person.statureCm");
            assertThat(example.patient().name()).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "high-irritability-acute, CLEAR",
        "low-irritability-stiff, CLEAR",
        "behaves-unlike-nerve, CLEAR",
        "fibular-neck-spanish, CLEAR",
        "red-flag-saddle-numbness, EMERGENCY",
        "published-l5-disc-bladder-sign, EMERGENCY",
        "published-hip-necrosis-leg-raise, CLEAR"
    })
    void screensAsItIsMeantTo(String name, Level level) throws IOException {
        CaseFile example = CaseFiles.read(Files.readAllBytes(FOLDER.resolve(name + ".yaml")), name);
        assertThat(Screening.load().evaluate(example.screeningInput()).level()).isEqualTo(level);
    }

    @Test
    void thereAreInventedAndPublishedOnes() throws IOException {
        assertThat(examples())
                .hasSizeGreaterThanOrEqualTo(6)
                .anySatisfy(file -> assertThat(file.getFileName().toString()).startsWith("published-"));
    }
}
