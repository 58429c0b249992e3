package slipway.app.respond;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.app.Run;
import slipway.app.console.ExitStatus;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class RespondCommandTest {
    private static final String CASE = "../examples/low-irritability-stiff.yaml";
    private static final String CHECK_INS = "../examples/check-ins/low-irritability-stiff.csv";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void answersEachCheckInWithOneObject() {
        Run run = Run.of("respond", CASE, CHECK_INS);
        assertThat(run.status()).as(run.err()).isZero();
        List<JsonNode> answers = run.out()
                .lines()
                .map(line -> JsonMapper.shared().readTree(line))
                .toList();
        assertThat(answers).hasSize(7);
        for (JsonNode answer : answers) {
            assertThat(answer.propertyNames())
                    .contains("checkinId", "decision", "rules", "excessFlareChance", "nextDose", "ceiling", "reasons");
            JsonNode chance = answer.get("excessFlareChance");
            assertThat(chance.get("low").asDouble())
                    .isLessThanOrEqualTo(chance.get("median").asDouble());
            assertThat(answer.get("nextDose").get("rung").asInt())
                    .isLessThanOrEqualTo(answer.get("ceiling").get("rung").asInt());
        }
        assertThat(answers.get(0).get("decision").asString()).isEqualTo("hold");
        JsonNode flare = answers.get(6);
        assertThat(flare.get("decision").asString()).isEqualTo("pause");
        assertThat(flare.get("rules").toString()).contains("large-rise").contains("slow-settle-long");
        assertThat(flare.get("nextDose").get("rangeFraction").asDouble()).isLessThanOrEqualTo(0.5);
    }

    @Test
    void sentencesOnDemandAndNothingAfterTheDay() {
        Run run = Run.of("respond", CASE, CHECK_INS, "--text", "--as-of", "2026-03-02");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out()).contains("c1").doesNotContain("c2").doesNotContain("{");
    }

    @Test
    void aBadFileIsNamedAndNothingIsApplied() throws IOException {
        Path bad = folder.resolve("bad.csv");
        Files.writeString(bad, Files.readString(Path.of(CHECK_INS)).replace("tingling", "tingle"));
        Run run = Run.of("respond", CASE, bad.toString());
        assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines().filter(line -> line.contains("tingle"))).hasSize(6);
    }

    @Test
    void aCaseThatTheScreeningStopsHasNothingToFollow() {
        Run run = Run.of("respond", "../examples/red-flag-saddle-numbness.yaml", CHECK_INS);
        assertThat(run.status()).isEqualTo(ExitStatus.NO_PLAN);
        assertThat(run.out()).isEmpty();
    }
}
