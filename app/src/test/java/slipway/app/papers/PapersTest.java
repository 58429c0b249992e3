package slipway.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.app.Run;
import slipway.app.console.ExitStatus;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;

/** What goes home, with the examples that ship with the program. */
class PapersTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    @TempDir
    private Path folder = Path.of("");

    private Run home(String command, String example, String... more) {
        var args = new java.util.ArrayList<>(java.util.List.of(
                command, EXAMPLES.resolve(example).toString(), "--out", folder.toString(), "--date", "2026-01-05"));
        args.addAll(java.util.List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    @Test
    void guideIsWrittenInTheLanguageOfThePersonAndTheTherapistIsTold() throws IOException {
        Run run = home("guide", "fibular-neck-spanish.yaml");
        assertThat(run.status()).isEqualTo(ExitStatus.OK);
        assertThat(run.err()).contains("guide-es.html", "not yet been reviewed by a speaker");
        String page = Files.readString(folder.resolve("guide-es.html"));
        assertThat(page).contains("lang=\"es\"").doesNotContain("reviewed");
        assertThat(home("guide", "fibular-neck-spanish.yaml", "--language", "en")
                        .err())
                .contains("guide-en.html")
                .doesNotContain("reviewed");
    }

    @ParameterizedTest
    @CsvSource({"a4,normal,sheet-en-a4.pdf", "letter,large,sheet-en-letter-large.pdf"})
    void sheetComesInBothPapersAndSizes(String paper, String type, String name) throws IOException {
        Run run = home("sheet", "low-irritability-stiff.yaml", "--paper", paper, "--type", type);
        assertThat(run.status()).as(run.err()).isEqualTo(ExitStatus.OK);
        assertThat(Files.readString(folder.resolve(name), java.nio.charset.StandardCharsets.ISO_8859_1))
                .startsWith("%PDF");
    }

    @Test
    void sheetTakesOnlyAWholeAddressOfTheGuide() {
        Run run = home("sheet", "low-irritability-stiff.yaml", "--guide-address", "ftp://clinic.example/guide");
        assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(run.err()).contains("--guide-address must be a whole https address");
        assertThat(home("sheet", "low-irritability-stiff.yaml", "--guide-address", "https://clinic.example/g")
                        .status())
                .isEqualTo(ExitStatus.OK);
    }

    @ParameterizedTest
    @ValueSource(strings = {"red-flag-saddle-numbness.yaml", "behaves-unlike-nerve.yaml"})
    void nothingGoesHomeWithoutAPlan(String example) throws IOException {
        for (String command : new String[] {"guide", "sheet"}) {
            Run run = home(command, example);
            assertThat(run.status()).isEqualTo(ExitStatus.NO_PLAN);
            assertThat(run.err()).contains("Nothing for home was written", "SCREENING");
        }
        try (var files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void figureIsPrintedAsAPictureWithWords() {
        Run run = Run.of("figure", "glide-knee-lying", "--pose", "far", "--side", "left", "--look", "dark");
        assertThat(run.status()).isZero();
        assertThat(run.out()).startsWith("<svg").contains("<title", "Straighten your knee");
        assertThat(run.out()).isNotEqualTo(Run.of("figure", "glide-knee-lying").out());
    }

    @Test
    void everyExerciseMovesAsAnAnimatedPicture() {
        for (Exercise exercise : Catalogue.bundled().list()) {
            Run run = Run.of("figure", exercise.id(), "--format", "animated");
            assertThat(run.status()).as(exercise.id()).isZero();
            // An exercise with one pose, such as walking, has no way that could be drawn.
            assertThat(run.out().contains("<animate "))
                    .as(exercise.id())
                    .isEqualTo(exercise.movement().poses().size() > 1);
            assertThat(run.out().length()).as(exercise.id()).isLessThan(200_000);
        }
    }

    @ParameterizedTest
    @CsvSource({"glide-knee-lyin,start,glide-knee-lying", "glide-knee-lying,middle,'start, far'"})
    void figureSaysWhatItKnows(String exercise, String pose, String hint) {
        Run run = Run.of("figure", exercise, "--pose", pose);
        assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(run.err()).contains(hint);
        assertThat(run.out()).isEmpty();
    }
}
