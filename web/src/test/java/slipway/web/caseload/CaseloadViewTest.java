package slipway.web.caseload;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.caseload.CaseloadReport;
import slipway.reasoning.caseload.EpisodeFacts;
import slipway.reasoning.measures.Measures;

class CaseloadViewTest {
    private static final Words WORDS = Words.beside(CaseloadController.class, Language.EN);

    private static List<EpisodeFacts> episodes(String group, int count, String measure, double from, double to) {
        var change = Measures.bundled().get(measure).change(from, to);
        return IntStream.range(0, count)
                .mapToObj(i -> new EpisodeFacts(
                        group, 40, true, OptionalDouble.of(0.75), Optional.empty(), Map.of(measure, change)))
                .toList();
    }

    private static CaseloadView view(List<EpisodeFacts> facts) {
        String measure = CaseloadReport.mostTaken(facts);
        return CaseloadView.of(CaseloadReport.of(facts, measure), measure, WORDS);
    }

    /** The error of the Roland-Morris questionnaire is 5 points: from 14 to 4 are 2 of them. */
    @Test
    void changesStandInUnitsOfTheError() {
        CaseloadView.Row row =
                view(episodes("ada", 6, "rmdq", 14, 4)).measures().get(0);
        assertThat(row.people()).isEqualTo("6");
        assertThat(row.units()).isEqualTo("+2.0 (+2.0 to +2.0)");
        assertThat(row.points()).isEqualTo("+10.0 (+10.0 to +10.0)");
        assertThat(row.better()).isEqualTo("6 of 6 (100 %)");
        CaseloadView.Row angle =
                view(episodes("ada", 6, "rmdq", 4, 14)).measures().get(0);
        assertThat(angle.units()).startsWith("−2.0");
    }

    @Test
    void whereNoErrorIsPublishedNothingIsCalledBetter() {
        CaseloadView.Row row =
                view(episodes("ada", 6, "ears", 10, 20)).measures().get(0);
        assertThat(List.of(row.units(), row.better(), row.important())).containsOnly("no published value");
    }

    @Test
    void fewAreNotShown() {
        CaseloadView view = view(episodes("ada", 4, "rmdq", 14, 4));
        CaseloadView.Row row = view.measures().get(0);
        assertThat(row.people()).isEqualTo("not shown (a count below 5)");
        assertThat(List.of(row.units(), row.points(), row.better(), row.important()))
                .containsOnly("–");
        assertThat(view.reportedDays()).isEqualTo("not shown (a count below 5)");
        assertThat(view.discharge()).isEqualTo("not shown (a count below 5)");
        assertThat(view(List.of()).funnel()).isEmpty();
    }

    @Test
    void theFunnelHasAPointForEachGroupAndNoName() {
        var facts = new ArrayList<EpisodeFacts>();
        facts.addAll(episodes("ada-of-tests", 20, "rmdq", 14, 4));
        facts.addAll(episodes("ada-of-tests", 10, "rmdq", 14, 13));
        facts.addAll(episodes("ben-of-tests", 30, "rmdq", 14, 13));
        CaseloadView view = view(facts);
        assertThat(view.funnelMeasure())
                .isEqualTo(Measures.bundled().get("rmdq").name());
        String light = view.funnel().orElseThrow().light();
        assertThat(light).contains("20 of 30 better, outside", "0 of 30 better, outside", "All together: 33 %");
        assertThat(light).doesNotContain("of-tests");
        assertThat(view(facts.subList(0, 30)).funnel()).isEmpty();
    }
}
