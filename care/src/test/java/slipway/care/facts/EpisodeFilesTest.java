package slipway.care.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.CaseFiles;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.MistakesException;
import slipway.reasoning.deadlines.Deadline;

class EpisodeFilesTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    private static CaseFile example() throws IOException {
        Path file = EXAMPLES.resolve("low-irritability-stiff.yaml");
        return CaseFiles.read(Files.readAllBytes(file), file.toString());
    }

    private static EpisodeFacts read(String text) throws IOException {
        return EpisodeFiles.read(text.getBytes(StandardCharsets.UTF_8), "episode", example());
    }

    @Test
    void readsTheExample() throws IOException {
        EpisodeFacts facts = read(Files.readString(EXAMPLES.resolve("episodes/low-irritability-stiff.yaml")));
        assertThat(facts.visits()).hasSize(4);
        assertThat(facts.visits().get(1).timedMinutes()).isEqualTo(47);
        assertThat(facts.series()).hasSize(4);
        assertThat(facts.completeGoals()).hasSize(2);
        assertThat(facts.start()).contains(LocalDate.of(2026, 4, 6));
        assertThat(facts.deadlines(LocalDate.of(2026, 5, 5)))
                .extracting(Deadline::state)
                .containsExactly(Deadline.State.DONE, Deadline.State.OPEN, Deadline.State.OPEN);
    }

    @Test
    void nothingLaterThanTheDayCounts() throws IOException {
        EpisodeFacts facts = read(Files.readString(EXAMPLES.resolve("episodes/low-irritability-stiff.yaml")));
        var early = facts.course(LocalDate.of(2026, 4, 14)).orElseThrow();
        assertThat(early.measures().get(0).series().scores()).hasSize(2);
        assertThat(facts.course(LocalDate.of(2026, 4, 5))).isEmpty();
    }

    @Test
    void allMistakesAreNamedAtOnceWithTheirPlaces() {
        var failure = catchThrowableOfType(MistakesException.class, () -> read("""
                        format: 1
                        case: somebody-else
                        measures:
                          - {measure: lefs, day: "2026-02-30", total: 40}
                          - {measure: lefs, day: "2026-03-01", total: 81}
                          - {measure: lefs, day: "2026-03-02"}
                        goals: [{id: a}, {id: a}]
                        """));
        assertThat(failure.mistakes()).extracting(Mistake::line).containsExactlyInAnyOrder(2, 4, 5, 6, 7);
    }

    @Test
    void anUnknownKeyOrMeasureIsRefused() {
        assertThatThrownBy(() -> read("format: 1\ncase: low-irritability-stiff\nvisit: []\n"))
                .isInstanceOf(MistakesException.class)
                .hasMessageContaining("visits");
        assertThatThrownBy(
                        () -> read(
                                "format: 1\ncase: low-irritability-stiff\nmeasures: [{measure: lesf, day: \"2026-03-01\", total: 3}]\n"))
                .isInstanceOf(MistakesException.class)
                .hasMessageContaining("lefs");
    }
}
