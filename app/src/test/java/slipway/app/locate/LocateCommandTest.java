package slipway.app.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.app.Run;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class LocateCommandTest {
    private static final double ROUNDED_DIGITS = 1e-4;

    @TempDir
    private Path folder;

    @Test
    void answersAListWithOneEntryPerCase() throws IOException {
        Run run = locate("""
                - id: A
                  side: left
                  shoe_size: 9
                  strength: {ankle_dorsiflexors: 2, ankle_evertors: 2, ankle_invertors: 5, hip_abductors: 5}
                  sensation: {moon: reduced}
                - id: B
                  side: bilateral
                  sensation: {perineum: reduced}
                  red_flags: [new constipation, odd teeth]
                """, "--format", "json");
        assertThat(run.status()).isZero();
        JsonNode cases = JsonMapper.shared().readTree(run.out());
        assertThat(cases.size()).isEqualTo(2);
        JsonNode first = cases.get(0);
        assertThat(first.path("id").asString()).isEqualTo("A");
        assertThat(first.path("screening").path("level").asString()).isEqualTo("urgent");
        assertThat(first.path("sites").get(0).path("site").asString()).isEqualTo("common_fibular_neck");
        double sum = 0;
        for (JsonNode site : first.path("sites")) {
            sum += site.path("probability").asDouble();
        }
        assertThat(sum).isCloseTo(1, within(ROUNDED_DIGITS));
        assertThat(first.path("notUsed").toString()).contains("shoe_size", "moon");
        assertThat(cases.get(1).path("screening").path("level").asString()).isEqualTo("emergency");
        assertThat(cases.get(1).path("notUsed").toString()).contains("odd teeth");
    }

    @Test
    void namesEveryMistakeOfAListWithItsPlaceAndAnswersNothing() throws IOException {
        Run run = locate("""
                - id: A
                  side: left
                  strength: {ankle_dorsiflexors: 7, quadriceps: 3, quads: 4}
                - id: A
                  side: left
                """, "--format", "json");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("line 3, column")
                .contains("grade must be within 0 and 5, was 7")
                .contains("contradicts")
                .contains("the id A is given twice");
    }

    @Test
    void answersForOnePersonWithReasonsAndScreening() {
        Run run = Run.of("locate", "../examples/fibular-neck-spanish.yaml");
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("Screening:", "for: ", "Not a diagnosis");
    }

    @Test
    void screeningOfADangerousCaseExitsWithThree() {
        Run run = Run.of("screen", "../examples/red-flag-saddle-numbness.yaml");
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.out()).contains("EMERGENCY", "0.19 to 0.43");
    }

    private Run locate(String yaml, String... options) throws IOException {
        Path file = Files.writeString(folder.resolve("cases.yaml"), yaml);
        String[] args = new String[options.length + 2];
        args[0] = "locate";
        args[1] = file.toString();
        System.arraycopy(options, 0, args, 2, options.length);
        return Run.of(args);
    }
}
