package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.caseload.KeptFigures;
import slipway.care.record.caseload.OutcomeAsk;
import slipway.care.record.caseload.OutcomeRow;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.chart.PlanDraft;
import slipway.care.record.chart.PlanState;
import slipway.care.record.chart.ResultInputs;
import slipway.care.record.chart.Stamp;
import slipway.care.record.follow.Goal;
import slipway.care.record.follow.MeasureEntry;
import slipway.mechanics.body.Side;

/** What counts of the episodes of a clinic, as the database hands it out. */
class OutcomesTest {
    private static final Instant START = World.NOON.minus(Duration.ofDays(60));
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
    private static final LocalDate RECENT = TODAY.minusDays(28);

    private static Chart begin(World world, Act act) {
        return world.records
                .charts()
                .begin(world.person("Ines Palo", act).id(), Side.LEFT, act.userId(), Map.of(), act);
    }

    private static Chart open(World world, Chart chart, Act act) {
        return world.records
                .charts()
                .open(chart.episode().id(), act)
                .chartIfOpen()
                .orElseThrow();
    }

    private static List<OutcomeRow> rows(World world, Act act) {
        return world.records.caseload().outcomes(OutcomeAsk.first(Instant.EPOCH, World.NOON, RECENT, 100), act);
    }

    private static MeasureEntry score(Chart chart, String measure, int daysAgo, int total) {
        return chart.measures().add(measure, TODAY.minusDays(daysAgo), World.json("{\"total\":" + total + "}"));
    }

    private static List<String> shown(List<OutcomeRow.Taken> entries) {
        return entries.stream()
                .map(each ->
                        each.measureId() + " " + each.day() + " " + each.body().path("total"))
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void ofManyScoresTheEndsAreHandedOutAndCorrectedOnesAreNot(Databases kind) {
        try (var world = new World(kind)) {
            Act act =
                    World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST).at(START);
            Chart chart = begin(world, act);
            score(chart, "rmdq", 40, 12);
            score(chart, "rmdq", 20, 9);
            MeasureEntry wrong = score(chart, "rmdq", 60, 1);
            chart.measures().correct(wrong.id(), TODAY.minusDays(60), World.json("{\"total\":18}"));
            score(chart, "rmdq", 0, 4);
            score(chart, "pain", 30, 6);

            OutcomeRow row = rows(world, act).get(0);
            assertThat(shown(row.ends()))
                    .containsExactly("pain 2026-01-31 6", "rmdq 2026-01-01 18", "rmdq 2026-03-02 4");
            assertThat(shown(row.recent())).containsExactly("rmdq 2026-02-10 9", "rmdq 2026-03-02 4");
        }
    }

    @ParameterizedTest
    @EnumSource
    void timesReportsAndGoalsAreCounted(Databases kind) {
        try (var world = new World(kind)) {
            Act act =
                    World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST).at(START);
            Chart chart = begin(world, act);
            OutcomeRow bare = rows(world, act).get(0);
            assertThat(bare.startedAt()).isEqualTo(START);
            assertThat(bare.homeSince()).isEmpty();
            assertThat(bare.reportDays()).isZero();
            assertThat(bare.goalsReached()).isFalse();

            Act later = act.at(START.plus(Duration.ofDays(2)));
            Chart then = open(world, chart, later);
            then.visits().start();
            release(then);
            report(world, chart, act, 3, "a");
            report(world, chart, act, 3, "b");
            report(world, chart, act, 5, "c");
            Goal first = goal(then, "walk");
            Goal second = goal(then, "sit");
            then.goals().change(in(first, "reached")).orThrow();
            assertThat(rows(world, act).get(0).goalsReached()).isFalse();
            then.goals().change(in(second, "dropped")).orThrow();
            Act end = act.at(START.plus(Duration.ofDays(9)));
            Chart last = open(world, chart, end);
            last.change(last.episode().version(), Side.LEFT, act.userId(), EpisodeState.CLOSED)
                    .orThrow();

            OutcomeRow row = rows(world, act).get(0);
            assertThat(row.startedAt()).isEqualTo(later.at());
            assertThat(row.homeSince()).contains(later.at());
            assertThat(row.closedAt()).contains(end.at());
            assertThat(row.reportDays()).isEqualTo(2);
            assertThat(row.goalsReached()).isTrue();
        }
    }

    private static void report(World world, Chart chart, Act act, int day, String id) {
        open(world, chart, act.at(START.plus(Duration.ofDays(day)).plus(Duration.ofMinutes(id.charAt(0)))))
                .checkIns()
                .add("check-in-" + id, "s", "some-glide", World.json("{\"worst\":2}"));
    }

    private static Goal goal(Chart chart, String words) {
        return chart.goals().add(words, Optional.empty(), World.json("{}"), Optional.empty());
    }

    private static Goal in(Goal goal, String state) {
        return new Goal(
                goal.id(),
                goal.episodeId(),
                goal.words(),
                goal.measureId(),
                goal.target(),
                goal.due(),
                state,
                goal.version(),
                goal.changedAt(),
                goal.changedBy());
    }

    private static void release(Chart chart) {
        int number = chart.plans()
                .add(new PlanDraft(
                        "case",
                        new ResultInputs(Map.of(), "d".repeat(64)),
                        new Stamp("0", "0"),
                        World.json("{}"),
                        World.json("{}"),
                        World.json("{}")))
                .number();
        chart.plans().move(number, PlanState.PROPOSED, PlanState.ACCEPTED).orThrow();
        chart.plans().move(number, PlanState.ACCEPTED, PlanState.RELEASED).orThrow();
    }

    @ParameterizedTest
    @EnumSource
    void reachTimeLimitAndErasureDecideWhichEpisodesCount(Databases kind) {
        try (var world = new World(kind)) {
            Act ada =
                    World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST).at(START);
            Act ben = World.act(world.therapist("ben", Reach.OWN), Role.THERAPIST);
            Act lead = World.act(world.account("dan", Role.LEAD, Reach.OWN), Role.LEAD);
            Act auditor = World.act(world.account("eve", Role.AUDITOR, Reach.CLINIC), Role.AUDITOR);
            Chart older = begin(world, ada);
            Chart newer = begin(world, ada.at(START.plusSeconds(1)));

            assertThat(ids(world, Instant.EPOCH, 100, lead))
                    .containsExactly(newer.episode().id(), older.episode().id());
            assertThat(ids(world, Instant.EPOCH, 1, lead))
                    .containsExactly(newer.episode().id());
            assertThat(ids(world, START.plusSeconds(1), 100, lead))
                    .containsExactly(newer.episode().id());
            assertThat(ids(world, Instant.EPOCH, 100, ben)).isEmpty();
            assertThat(ids(world, Instant.EPOCH, 100, auditor)).isEmpty();
            assertThatThrownBy(() -> ids(world, Instant.EPOCH, 20_001, lead)).hasMessageContaining("20000");

            world.records.people().erase(newer.episode().personId(), "asked for by letter", World.PROGRAM);
            assertThat(ids(world, Instant.EPOCH, 100, lead))
                    .containsExactly(older.episode().id());
        }
    }

    @ParameterizedTest
    @EnumSource
    void pagesTogetherAreTheWhole(Databases kind) {
        try (var world = new World(kind)) {
            Act ada =
                    World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST).at(START);
            for (int i = 0; i < 7; i++) {
                // Some of them opened in the same moment.
                begin(world, ada.at(START.plusSeconds(i / 3)));
            }
            Act lead = World.act(world.account("dan", Role.LEAD, Reach.OWN), Role.LEAD);
            var ask = OutcomeAsk.first(Instant.EPOCH, World.NOON, RECENT, 2);
            var paged = new ArrayList<String>();
            for (List<OutcomeRow> page = world.records.caseload().outcomes(ask, lead);
                    !page.isEmpty();
                    page = world.records.caseload().outcomes(ask, lead)) {
                page.forEach(row -> paged.add(row.episodeId()));
                ask = ask.behind(page.get(page.size() - 1));
            }
            assertThat(paged).hasSize(7).isEqualTo(ids(world, Instant.EPOCH, 100, lead));
        }
    }

    @ParameterizedTest
    @EnumSource
    void figuresAreKeptOnceAndForThoseWhoSeeTheWholeClinic(Databases kind) {
        try (var world = new World(kind)) {
            Act own = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Act lead = World.act(world.account("dan", Role.LEAD, Reach.OWN), Role.LEAD);
            var caseload = world.records.caseload();
            assertThat(caseload.figures(lead)).isEmpty();
            caseload.keep(new KeptFigures(START, World.json("{\"form\":1}")), lead);
            var last = new KeptFigures(World.NOON, World.json("{\"form\":2}"));
            caseload.keep(last, World.PROGRAM);
            assertThat(caseload.figures(lead)).contains(last);
            assertThat(caseload.figures(own)).isEmpty();
            assertThatThrownBy(() -> caseload.keep(last, own)).hasMessageContaining("sees all of it");
        }
    }

    private static List<String> ids(World world, Instant from, int limit, Act act) {
        return world.records.caseload().outcomes(OutcomeAsk.first(from, World.NOON, RECENT, limit), act).stream()
                .map(OutcomeRow::episodeId)
                .toList();
    }
}
