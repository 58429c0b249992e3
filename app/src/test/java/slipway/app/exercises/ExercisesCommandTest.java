package slipway.app.exercises;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.json.JsonMapper;

class ExercisesCommandTest {
    @TempDir
    private Path folder = Path.of("");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void listsTheCatalogueAsTextAndJson() {
        assertThat(run()).isZero();
        assertThat(out.toString()).contains("glide-knee-lying").contains("Knee glide with a strap, lying");
        out.getBuffer().setLength(0);
        assertThat(run("--format", "json", "--language", "es")).isZero();
        assertThat(JsonMapper.shared().readTree(out.toString()).size()).isGreaterThan(48);
    }

    @Test
    void showsOneExercise() {
        assertThat(run("glide-knee-lying", "--language", "es")).isZero();
        assertThat(out.toString())
                .contains("1. Acuéstese boca arriba")
                .contains("Pare si su dolor")
                .contains("INFLESZ");
        out.getBuffer().setLength(0);
        assertThat(run("glide-knee-lying", "--format", "json")).isZero();
        assertThat(JsonMapper.shared()
                        .readTree(out.toString())
                        .at("/openAnglesDeg/0/farthest")
                        .asDouble())
                .isEqualTo(10);
    }

    /** What slides and what loads is computed: at a root a raised leg with the foot up asks more than one with it down. */
    @Test
    void showsTheLoadsOfGlidesAtAPlace() {
        assertThat(run("--loads", "root L5 at foramen")).isZero();
        assertThat(out.toString())
                .containsPattern("glide-hip-lying .* slides")
                .containsPattern("glide-slump-chin-down-sitting .* loads")
                .containsPattern("glide-ankle-lying .* no movement shown")
                .doesNotContain("glide-front-knee-prone");
        out.getBuffer().setLength(0);
        assertThat(run("glide-hip-lying", "--loads", "deep gluteal space")).isZero();
        assertThat(out.toString()).contains("way not known").doesNotContain("glide-knee-lying");
        assertThat(run("--loads", "nowhere")).isEqualTo(2);
        assertThat(err.toString()).contains("known: conus");
    }

    @Test
    void refusesWhatItDoesNotKnow() {
        assertThat(run("glide-nee-lying")).isEqualTo(2);
        assertThat(err.toString()).contains("nearest: glide-knee-lying");
        assertThat(run("--language", "fr")).isEqualTo(2);
        assertThat(run("--check", folder.resolve("none.yaml").toString())).isEqualTo(2);
    }

    @Test
    void checksAFileAndTellsAllItsMistakes() throws IOException {
        Path file = folder.resolve("mine.yaml");
        Files.writeString(file, "id: mine\nname: {en: Mine}\npurpos: glide\n");
        assertThat(run("--check", file.toString())).isEqualTo(2);
        assertThat(err.toString())
                .contains("mine.yaml: line 2, column 1: name: the key \"es\" is missing")
                .contains("mine.yaml: line 3, column 1: purpos: unknown key \"purpos\" (nearest: purpose)")
                .contains("the key \"poses\" is missing");
    }

    private int run(String... arguments) {
        return new CommandLine(new ExercisesCommand())
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }
}
