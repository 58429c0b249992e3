package slipway.study.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import slipway.study.load.LoadTables;
import slipway.study.run.Measure;
import slipway.study.run.Simulation;
import slipway.study.run.StudyPlan;
import slipway.study.run.StudyRun;
import slipway.study.run.StudyState;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ReportTest {
    private static final StudyPlan PLAN = new StudyPlan(20, 28, 9, "test");
    private static final StudyState STATE = new StudyState(PLAN);

    @BeforeAll
    static void run() {
        new StudyRun(new Simulation(LoadTables.compute())).run(STATE, 2, () -> false, () -> {});
    }

    @Test
    void summaryHoldsEveryWayInEveryWorldWithItsNumbers() {
        StudyResults results = StudyResults.of(STATE);
        JsonNode root = new JsonMapper().readTree(SummaryJson.of(results));
        int worlds = PLAN.worlds().size() + 1;
        assertThat(root.path("results").size())
                .isEqualTo(worlds * PLAN.policies().size());
        JsonNode first = root.path("results").get(0);
        Result visits = results.get("visits", PLAN.worlds().get(0).id());
        assertThat(first.path("policy").asString()).isEqualTo("visits");
        assertThat(first.path("people").asLong()).isEqualTo(20);
        assertThat(first.path("flaresPerPerson").asDouble())
                .isEqualTo(visits.tally().sum(0, Measure.FLARE_DAYS) / 20.0);
        assertThat(first.path("missedSafety").asLong()).isZero();
        assertThat(first.path("intervals").path("goalShare").size()).isEqualTo(2);
        assertThat(root.path("what").asString()).contains("not clinical evidence");
    }

    @Test
    void plausibleTogetherIsTheMeanOfThePlausibleWorlds() {
        StudyResults results = StudyResults.of(STATE);
        double mean = PLAN.worlds().stream()
                .filter(world -> world.plausible())
                .mapToDouble(world -> results.get("program", world.id())
                        .mean(Measure.FLARE_DAYS)
                        .value())
                .average()
                .orElseThrow();
        assertThat(results.get("program", StudyResults.ALL_PLAUSIBLE)
                        .mean(Measure.FLARE_DAYS)
                        .value())
                .isCloseTo(mean, org.assertj.core.api.Assertions.within(1e-12));
    }

    @Test
    void csvHasALineForEveryWayWorldAndMeasure() {
        String csv = StudyCsv.of(StudyResults.of(STATE));
        long lines = csv.lines().count();
        assertThat(lines)
                .isEqualTo(
                        1L + (long) (PLAN.worlds().size() + 1) * PLAN.policies().size() * Measure.values().length);
        assertThat(csv.lines().allMatch(line -> line.split(",", -1).length == 14))
                .isTrue();
    }

    @Test
    void pageSaysWhatItIsNotAndHoldsItsPlots() {
        String page = ReportHtml.of(StudyResults.of(STATE));
        assertThat(page).contains("not clinical evidence").contains("What this cannot show");
        assertThat(page.split("<svg", -1).length - 1).isEqualTo(4);
        assertThat(page).doesNotContain("NaN");
    }

    @Test
    void stateComesBackAsItWasAndOnlyForTheSameRun() {
        StudyState back = StateJson.read(PLAN, StateJson.of(STATE));
        assertThat(back.complete()).isTrue();
        assertThat(back.tally(3).numbers()).isEqualTo(STATE.tally(3).numbers());
        var other = new StudyPlan(20, 28, 10, "test");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StateJson.read(other, StateJson.of(STATE)))
                .withMessageContaining("another run");
        assertThatIllegalArgumentException().isThrownBy(() -> StateJson.read(PLAN, "{\"run\":"));
    }
}
