package slipway.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import slipway.app.Main;
import slipway.app.console.ExitStatus;
import slipway.care.plan.PlanSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The main job from file to files, with the examples that ship with the program. */
class PlanCommandTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    @TempDir
    private Path folder = Path.of("");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int plan(Path file, String... more) {
        CommandLine line = Main.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        var args = Stream.concat(
                Stream.of(
                        "plan", file.toString(), "--out", folder.resolve("out").toString(), "--date", "2026-01-05"),
                Stream.of(more));
        return line.execute(args.toArray(String[]::new));
    }

    private List<String> written() throws IOException {
        Path dir = folder.resolve("out");
        if (!Files.exists(dir)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(dir)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private JsonNode json() throws IOException {
        byte[] bytes = Files.readAllBytes(folder.resolve("out").resolve("plan.json"));
        assertThat(PlanSchema.check(bytes, "plan.json")).isEmpty();
        return JsonMapper.shared().readTree(bytes);
    }

    @Test
    void lowIrritabilityGetsThreeGlidesBelowTheTolerance() throws IOException {
        assertThat(plan(EXAMPLES.resolve("low-irritability-stiff.yaml"))).isEqualTo(ExitStatus.OK);
        assertThat(written())
                .containsExactly("load-ruler.svg", "plan.json", "plan.txt", "sheet-en-a4.pdf", "sheet-en-letter.pdf");
        JsonNode plan = json();
        assertThat(plan.path("plan").path("exercises").values().stream()
                        .map(e -> e.path("id").asString()))
                .containsExactly("glide-ankle-lying", "glide-knee-lying", "glide-hip-lying");
        for (JsonNode exercise : plan.path("plan").path("exercises").values()) {
            // Design of the range: at most one draw in ten above the limit.
            assertThat(exercise.path("probabilityAboveLimit").asDouble()).isLessThanOrEqualTo(0.1);
        }
        assertThat(out.toString()).contains("EXERCISES", "not a diagnosis");
    }

    @Test
    void highIrritabilityStaysFurtherFromTheOnset() throws IOException {
        assertThat(plan(EXAMPLES.resolve("high-irritability-acute.yaml"))).isEqualTo(ExitStatus.OK);
        JsonNode plan = json();
        assertThat(plan.path("irritability").path("level").asString()).isEqualTo("high");
        for (JsonNode exercise : plan.path("plan").path("exercises").values()) {
            // Common practice: 3 to 5 in a go, once a day.
            assertThat(exercise.path("repetitions").asInt()).isBetween(3, 5);
            assertThat(exercise.path("sessionsPerDay").asInt()).isEqualTo(1);
        }
    }

    @Test
    void whatDoesNotBehaveLikeNerveGetsNoGlides() throws IOException {
        for (String name : List.of("behaves-unlike-nerve.yaml", "published-hip-necrosis-leg-raise.yaml")) {
            assertThat(plan(EXAMPLES.resolve(name))).isEqualTo(ExitStatus.OK);
            JsonNode plan = json();
            assertThat(plan.path("tolerance").path("behavesLikeNerve").asString())
                    .isEqualTo("no");
            assertThat(plan.path("plan").path("exercises").size()).isZero();
        }
    }

    @Test
    void redFlagsEndInALetterAndNoPlan() throws IOException {
        for (String name : List.of("red-flag-saddle-numbness.yaml", "published-l5-disc-bladder-sign.yaml")) {
            assertThat(plan(EXAMPLES.resolve(name))).isEqualTo(ExitStatus.NO_PLAN);
            JsonNode plan = json();
            assertThat(plan.path("screening").path("level").asString()).isEqualTo("emergency");
            assertThat(plan.has("plan")).isFalse();
            assertThat(plan.has("tolerance")).isFalse();
        }
        assertThat(written()).containsExactly("letter.pdf", "letter.txt", "plan.json", "plan.txt");
        assertThat(Files.readString(folder.resolve("out").resolve("letter.txt")))
                .contains("bladder");
    }

    /** The folder for the files cannot be made, since a file has its name. */
    @Test
    void anEmergencyIsToldEvenIfNoFileCanBeWritten() throws IOException {
        Files.writeString(folder.resolve("out"), "in the way");
        assertThat(plan(EXAMPLES.resolve("red-flag-saddle-numbness.yaml"))).isEqualTo(ExitStatus.ENVIRONMENT);
        assertThat(out.toString()).containsIgnoringCase("emergency");
        assertThat(err.toString()).contains("cannot be written");
        assertThat(folder.resolve("out")).hasContent("in the way");
    }

    @Test
    void spanishSheetComesWithAWordToTheTherapist() throws IOException {
        assertThat(plan(EXAMPLES.resolve("fibular-neck-spanish.yaml"))).isEqualTo(ExitStatus.OK);
        assertThat(written()).contains("sheet-es-a4.pdf", "sheet-en-a4.pdf");
        assertThat(err.toString()).contains("not yet been reviewed by a speaker");
    }

    @Test
    void samePersonGivesTheSamePlan() throws IOException {
        Path file = EXAMPLES.resolve("high-irritability-acute.yaml");
        plan(file);
        String first = Files.readString(folder.resolve("out").resolve("plan.json"));
        plan(file);
        assertThat(Files.readString(folder.resolve("out").resolve("plan.json"))).isEqualTo(first);
    }

    @Test
    void withoutANeuralTestThereIsNoGlide() throws IOException {
        Path file = folder.resolve("untested.yaml");
        String text = Files.readString(EXAMPLES.resolve("low-irritability-stiff.yaml"));
        Files.writeString(file, text.replaceFirst("(?ms)^tests:.*?(?=^[a-z])", ""));
        assertThat(plan(file)).isEqualTo(ExitStatus.OK);
        assertThat(json().path("plan").path("exercises").size()).isZero();
        assertThat(out.toString().replaceAll("\\s+", " ")).contains("examine first");
    }

    @Test
    void sheetSaysNotToGoBeyondThePicture() throws IOException {
        assertThat(plan(EXAMPLES.resolve("low-irritability-stiff.yaml"))).isEqualTo(ExitStatus.OK);
        byte[] sheet = Files.readAllBytes(folder.resolve("out").resolve("sheet-en-a4.pdf"));
        try (PDDocument pdf = Loader.loadPDF(sheet)) {
            assertThat(new PDFTextStripper().getText(pdf).replaceAll("\\s+", " "))
                    .contains("no further than the second picture");
        }
    }

    @Test
    void badFileIsRefusedWithAllMistakesAndWritesNothing() throws IOException {
        Path bad = folder.resolve("bad.yaml");
        String good = Files.readString(EXAMPLES.resolve("low-irritability-stiff.yaml"));
        Files.writeString(
                bad, good.replaceFirst("onsetDeg: \\d+", "onsetDeg: 400").replaceFirst("side: right", "sid: right"));
        assertThat(plan(bad)).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(written()).isEmpty();
        assertThat(err.toString()).contains("400", "sid", "line");
    }
}
