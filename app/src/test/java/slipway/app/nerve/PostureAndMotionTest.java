package slipway.app.nerve;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import slipway.app.Main;
import slipway.app.console.ExitStatus;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PostureAndMotionTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(args);
    }

    @Test
    void aPostureAgainstItselfShowsNothing() {
        assertThat(run("posture", "hip 60 ankle 10", "--from", "hip 60 ankle 10"))
                .isEqualTo(ExitStatus.OK);
        assertThat(out.toString()).contains("mean positive strain along the tract 0.0 (0.0 to 0.0) %");
    }

    @Test
    void aRaisedLegLoadsAndUnknownWordsAreNamed() {
        assertThat(run("posture", "hip 60", "--format", "json")).isEqualTo(ExitStatus.OK);
        assertThat(out.toString()).contains("deep gluteal space").doesNotContain("NaN");
        assertThat(run("posture", "sit", "--tract", "nope")).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(err.toString()).contains("unknown joint \"sit\"", "or a position", "unknown tract \"nope\"");
    }

    /** In a raised leg the nerve slides down above the hip and up below it; in between the draws do not agree. */
    @Test
    void whereTheWayIsNotKnownItSaysSo() {
        assertThat(run("posture", "hip 60")).isEqualTo(ExitStatus.OK);
        assertThat(out.toString().lines().filter(line -> line.startsWith("deep gluteal space")))
                .singleElement()
                .asString()
                .contains(" ?");
        assertThat(out.toString().lines().filter(line -> line.startsWith("root L5")))
                .singleElement()
                .asString()
                .doesNotContain("?");
        assertThat(out.toString()).contains("do not agree which way");
    }

    @Test
    void twoPosturesStandSideBySide() {
        assertThat(run("posture", "lying", "--beside", "hip 60")).isEqualTo(ExitStatus.OK);
        assertThat(out.toString().lines().filter(line -> line.startsWith("gluteal fold")))
                .singleElement()
                .asString()
                // Lying is what both are compared with; a raised leg strains the fold.
                .matches("gluteal fold +0\\.0 \\(0\\.0, 0\\.0\\) +[1-9].*");
        assertThat(run("posture", "lying", "--beside", "hip 60", "--format", "svg"))
                .isEqualTo(ExitStatus.BAD_INPUT);
        out.getBuffer().setLength(0);
        assertThat(run("posture", "lying", "--beside", "hip 60", "--format", "json"))
                .isEqualTo(ExitStatus.OK);
        JsonNode both = JsonMapper.shared().readTree(out.toString());
        assertThat(both.path("a").path("posture").asString())
                .isNotEqualTo(both.path("b").path("posture").asString());
        assertThat(both.path("b").path("sites").size())
                .isPositive()
                .isEqualTo(both.path("a").path("sites").size());
    }

    @Test
    void aMotionThatComesBackEndsWhereItBegan() {
        assertThat(run("motion", "hip 60 knee 80 -> hip 60 knee 10 -> hip 60 knee 80"))
                .isEqualTo(ExitStatus.OK);
        String[] lines = out.toString().split("\n", -1);
        // A header, 41 moments, and the end of the last line.
        assertThat(lines).hasSize(43);
        assertThat(lines[41]).startsWith("6.000,hip 60 knee 80,").contains(",0.000,");
        assertThat(lines[21].split(",", -1)[6]).as("load half way").isNotEqualTo("0.000");
    }

    @Test
    void comparingAndVaryingSayWhyTheyCannot() {
        String red = "../examples/red-flag-saddle-numbness.yaml";
        String stiff = "../examples/low-irritability-stiff.yaml";
        assertThat(run("what-if", red)).isEqualTo(ExitStatus.NO_PLAN);
        assertThat(run("compare", stiff, "glide-knee-lying", "glide-knee-lying"))
                .isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(err.toString()).contains("screening stops the plan", "is given twice");
        assertThat(run("compare", stiff, "glide-knee-lying", "glide-hip-lying")).isEqualTo(ExitStatus.OK);
        assertThat(out.toString()).contains("of the draws");
    }
}
