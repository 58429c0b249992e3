package slipway.care.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slipway.care.record.caseload.OutcomeRow;
import slipway.reasoning.caseload.EpisodeFacts;
import slipway.reasoning.measures.Change;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class OutcomesTest {
    private static final Instant NOW = Instant.parse("2026-03-02T12:00:00Z");
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
    private static final Instant START = NOW.minus(Duration.ofDays(60));

    private static OutcomeRow.Taken score(String measure, int daysAgo, String body) {
        return new OutcomeRow.Taken(measure, TODAY.minusDays(daysAgo), (ObjectNode)
                JsonMapper.shared().readTree(body));
    }

    private static OutcomeRow.Taken total(String measure, int daysAgo, int total) {
        return score(measure, daysAgo, "{\"total\":" + total + "}");
    }

    private static OutcomeRow row(
            Optional<Instant> closedAt,
            Optional<Instant> home,
            boolean reached,
            List<OutcomeRow.Taken> ends,
            List<OutcomeRow.Taken> recent) {
        return new OutcomeRow(
                new OutcomeRow.Place(START, "e"), "ada", START, closedAt, home, 10, reached, ends, recent);
    }

    private static EpisodeFacts of(OutcomeRow row) {
        return Outcomes.of(List.of(row), NOW, ZoneOffset.UTC).get(0);
    }

    @Test
    void theChangeIsFromTheFirstScoreToTheLast() {
        EpisodeFacts facts = of(row(
                Optional.empty(),
                Optional.empty(),
                false,
                List.of(
                        total("rmdq", 60, 14),
                        total("rmdq", 1, 4),
                        total("pain", 60, 6),
                        total("lefs", 60, 40),
                        score("lefs", 1, "{\"total\":\"many\"}"),
                        total("no-such-measure", 60, 1)),
                List.of()));
        assertThat(facts.changes().keySet()).containsExactly("rmdq");
        assertThat(facts.changes().get("rmdq"))
                .isInstanceOfSatisfying(
                        Change.class, change -> assertThat(change.gain()).isEqualTo(10));
    }

    @Test
    void daysAndReportsEndWithTheEpisode() {
        EpisodeFacts open =
                of(row(Optional.empty(), Optional.of(START.plus(Duration.ofDays(10))), false, List.of(), List.of()));
        assertThat(open.days()).isEqualTo(60);
        assertThat(open.discharged()).isFalse();
        assertThat(open.reportedDays()).isEqualTo(OptionalDouble.of(10.0 / 51));
        EpisodeFacts closed = of(row(
                Optional.of(START.plus(Duration.ofDays(30))),
                Optional.of(START.plus(Duration.ofDays(10))),
                false,
                List.of(),
                List.of()));
        assertThat(closed.days()).isEqualTo(30);
        assertThat(closed.discharged()).isTrue();
        assertThat(closed.reportedDays()).isEqualTo(OptionalDouble.of(10.0 / 21));
        assertThat(of(row(Optional.empty(), Optional.empty(), false, List.of(), List.of()))
                        .reportedDays())
                .isEmpty();
    }

    @Test
    void standingStillTakesTwoMeasuresAndAGoalThatIsNotReached() {
        var still = List.of(total("rmdq", 20, 12), total("rmdq", 1, 11), total("pain", 20, 6), total("pain", 1, 6));
        assertThat(stalled(false, still)).contains(true);
        assertThat(stalled(true, still)).contains(false);
        assertThat(stalled(false, still.subList(0, 2))).isEmpty();
        assertThat(stalled(false, List.of())).isEmpty();
        var moving = List.of(total("rmdq", 20, 14), total("rmdq", 1, 4), total("pain", 20, 6), total("pain", 1, 6));
        assertThat(stalled(false, moving)).contains(false);
        assertThat(of(row(Optional.of(NOW), Optional.empty(), false, List.of(), still))
                        .stalled())
                .isEmpty();
    }

    private static Optional<Boolean> stalled(boolean reached, List<OutcomeRow.Taken> recent) {
        return of(row(Optional.empty(), Optional.empty(), reached, List.of(), recent))
                .stalled();
    }
}
