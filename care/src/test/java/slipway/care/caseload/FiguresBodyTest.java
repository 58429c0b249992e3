package slipway.care.caseload;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slipway.care.record.caseload.KeptFigures;
import slipway.reasoning.caseload.CaseloadReport;
import slipway.reasoning.caseload.EpisodeFacts;
import slipway.reasoning.measures.Measures;
import tools.jackson.databind.node.ObjectNode;

class FiguresBodyTest {
    private static final Instant NOW = Instant.parse("2026-03-02T12:00:00Z");

    private static List<EpisodeFacts> episodes(String group, int count, String measure, double to) {
        var change = Measures.bundled().get(measure).change(14, to);
        return IntStream.range(0, count)
                .mapToObj(i -> new EpisodeFacts(
                        group,
                        20 + i,
                        i % 3 == 0,
                        OptionalDouble.of(1.0 / (i + 3)),
                        Optional.of(i % 2 == 0),
                        Map.of(measure, change)))
                .toList();
    }

    private static CaseloadFigures figures(List<EpisodeFacts> facts) {
        String measure = CaseloadReport.mostTaken(facts);
        return new CaseloadFigures(NOW, measure, CaseloadReport.of(facts, measure));
    }

    @Test
    void whatIsReadIsWhatWasKept() {
        var facts = new ArrayList<EpisodeFacts>();
        facts.addAll(episodes("ada", 30, "rmdq", 4));
        facts.addAll(episodes("ada", 20, "rmdq", 13));
        facts.addAll(episodes("ben", 40, "rmdq", 13));
        facts.addAll(episodes("ben", 3, "lefs", 40));
        CaseloadFigures figures = figures(facts);
        assertThat(figures.report().groups()).hasSize(2);
        assertThat(FiguresBody.read(FiguresBody.of(figures))).contains(figures);
        assertThat(FiguresBody.read(FiguresBody.of(figures(List.of())))).contains(figures(List.of()));
    }

    @Test
    void whatIsTooFewToShowIsNotKeptEither() {
        ObjectNode body =
                FiguresBody.of(figures(episodes("only-three", 3, "rmdq", 4))).body();
        assertThat(body.toString()).doesNotContain("only-three", "people", "count");
        assertThat(body.path("measures").path("rmdq").isNull()).isTrue();
    }

    @Test
    void figuresOfAnotherFormAreWorkedOutAgain() {
        KeptFigures kept = FiguresBody.of(figures(List.of()));
        ObjectNode other = kept.body();
        other.put("form", 2);
        assertThat(FiguresBody.read(new KeptFigures(NOW, other))).isEmpty();
    }
}
