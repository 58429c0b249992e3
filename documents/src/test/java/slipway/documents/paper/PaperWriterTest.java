package slipway.documents.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.junit.jupiter.params.provider.MethodSource;

class PaperWriterTest {
    private static final PaperInput FULL = SamplePapers.full();
    private static final PaperInput BARE = SamplePapers.bare("behaves-unlike-nerve");
    private static final PaperInput STOPPED = SamplePapers.bare("red-flag-saddle-numbness");

    /** Words that would claim a cause. */
    private static final List<String> CAUSAL =
            List.of("because of", "due to", "thanks to", "caused by", "resulted from", "as a result");

    static Stream<PaperText> papers() {
        var fromFull = EnumSet.complementOf(EnumSet.of(PaperKind.REFERRAL)).stream()
                .map(kind -> PaperWriter.write(kind, FULL));
        var fromBare =
                EnumSet.complementOf(EnumSet.of(PaperKind.REFERRAL, PaperKind.VISIT_NOTE, PaperKind.RELAPSE_PLAN))
                        .stream()
                        .map(kind -> PaperWriter.write(kind, BARE));
        return Stream.of(fromFull, fromBare, Stream.of(PaperWriter.write(PaperKind.REFERRAL, STOPPED)))
                .flatMap(papers -> papers);
    }

    @ParameterizedTest
    @MethodSource("papers")
    void everySentenceIsAssembledAndNamesItsSource(PaperText paper) {
        assertThat(paper.sentences()).isNotEmpty().allSatisfy(sentence -> {
            assertThat(sentence.state()).isIn(Sentence.State.ASSEMBLED, Sentence.State.BLANK);
            assertThat(sentence.sources())
                    .isNotEmpty()
                    .allMatch(source ->
                            source.matches("(case|episode|plan|visit|measure|goal|checkIn)(/[\\w.-]+)*|text"));
        });
    }

    @ParameterizedTest
    @MethodSource("papers")
    void noPaperClaimsACause(PaperText paper) {
        String all = paper.sentences().stream()
                .filter(sentence -> sentence.sources().stream().noneMatch(source -> source.startsWith("case/")))
                .map(sentence -> sentence.text().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining("\n"));
        assertThat(CAUSAL).noneMatch(all::contains);
    }

    @Test
    void improvementIsSaidToHaveComeDuringCare() {
        String said = PaperWriter.write(PaperKind.PROGRESS_REPORT, FULL)
                .find("measures/during")
                .orElseThrow()
                .text();
        assertThat(said)
                .startsWith("Improved during care")
                .contains("Roland-Morris")
                .doesNotContain("leg raise");
    }

    @Test
    void whatWasNotRecordedIsSaidToBeNotRecorded() {
        PaperText report = PaperWriter.write(PaperKind.PROGRESS_REPORT, BARE);
        assertThat(report.blanks())
                .extracting(Sentence::id)
                .contains(
                        "period/days",
                        "statements/none",
                        "measures/none",
                        "goals/none",
                        "home/none",
                        "dosage/frequency",
                        "next/next");
        assertThat(report.blanks()).allMatch(sentence -> sentence.text().endsWith(": not recorded."));
    }

    @Test
    void everyWordOfTheRecordGoesInUnchanged() {
        PaperText note = PaperWriter.write(PaperKind.VISIT_NOTE, FULL);
        assertThat(note.find("visit/told").orElseThrow().text())
                .isEqualTo("The person said: Drove four hours, stiff for a minute when getting out.");
        assertThat(note.find("time/units").orElseThrow().text()).startsWith("2 units: A 2");
    }

    @Test
    void aStopThatWasNotReleasedStandsBeforeTheDosesOfThePlan() {
        PaperInput stopped = SamplePapers.withNewWeakness();
        for (PaperKind kind : EnumSet.of(PaperKind.PROGRESS_REPORT, PaperKind.LETTER, PaperKind.DISCHARGE)) {
            PaperText paper = PaperWriter.write(kind, stopped);
            assertThat(paper.find("exercises/all-stopped")).isPresent();
            assertThat(paper.sentences()).noneMatch(each -> each.id().startsWith("home/dose-"));
        }
    }

    @Test
    void aStoppedPlanLetsNoExerciseIntoAnyPaper() {
        PaperText evaluation = PaperWriter.write(PaperKind.EVALUATION, STOPPED);
        assertThat(evaluation.find("exercises/stopped")).isPresent();
        assertThat(evaluation.sentences()).noneMatch(each -> each.text().contains("repetitions"));
        assertThat(PaperWriter.write(PaperKind.REFERRAL, STOPPED)
                        .find("urgency/urgency.NOW")
                        .map(Sentence::text))
                .contains("Emergency: to be seen now.");
    }

    @ParameterizedTest
    @EnumSource(
            value = PaperKind.class,
            names = {"REFERRAL", "VISIT_NOTE", "RELAPSE_PLAN"},
            mode = Mode.INCLUDE)
    void aPaperAboutNothingIsRefused(PaperKind kind) {
        assertThatThrownBy(() -> PaperWriter.write(kind, BARE)).isInstanceOf(IllegalArgumentException.class);
    }
}
