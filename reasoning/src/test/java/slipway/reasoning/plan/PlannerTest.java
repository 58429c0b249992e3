package slipway.reasoning.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.mechanics.body.Side;
import slipway.reasoning.ChainNerve;
import slipway.reasoning.Findings;
import slipway.reasoning.Glides;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.dose.DoseFindings;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.irritability.IrritabilityFindings;
import slipway.reasoning.tolerance.SuspectedSite;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlannerTest {
    @Test
    void theJsonHasTheDocumentedKeys() {
        JsonNode json = JsonMapper.shared()
                .valueToTree(plan(ScreeningSummary.Level.CLEAR).plan());
        assertThat(json.propertyNames())
                .containsExactlyInAnyOrder(
                        "screening", "sites", "tolerance", "irritability", "plan", "cautions", "model");
        assertThat(json.at("/screening/level").asString()).isEqualTo("clear");
        assertThat(json.at("/irritability/level").asString()).isEqualTo("moderate");
        assertThat(json.at("/tolerance/behavesLikeNerve").asString()).isEqualTo("undetermined");
        assertThat(json.at("/sites/0").propertyNames()).containsExactlyInAnyOrder("site", "probability", "modelled");
        assertThat(json.get("tolerance").propertyNames())
                .containsExactlyInAnyOrder(
                        "restPosture", "alpha", "perSite", "effectiveDraws", "behavesLikeNerve", "reasons");
        assertThat(json.at("/tolerance/alpha").propertyNames()).containsExactlyInAnyOrder("prior", "posterior");
        assertThat(json.at("/tolerance/perSite/0").propertyNames())
                .containsExactlyInAnyOrder("site", "medianPct", "lowPct", "highPct");
        assertThat(json.at("/plan/exercises/0").propertyNames())
                .containsExactlyInAnyOrder(
                        "id",
                        "position",
                        "ranges",
                        "repetitions",
                        "sets",
                        "sessionsPerDay",
                        "secondsPerDirection",
                        "site",
                        "glideMm",
                        "peakLoadPct",
                        "limitPct",
                        "probabilityAboveLimit",
                        "glideToLoad",
                        "movementShown",
                        "guards",
                        "reasons");
        assertThat(json.at("/plan/exercises/0/ranges/0").propertyNames())
                .containsExactlyInAnyOrder("joint", "fromDeg", "toDeg");
        assertThat(json.at("/plan/exercises/0/glideMm").propertyNames())
                .containsExactlyInAnyOrder("median", "low", "high");
        assertThat(json.get("model").propertyNames())
                .containsExactlyInAnyOrder("version", "parametersSha256", "evidenceSha256", "draws", "seed");
    }

    @Test
    void nothingIsCalledSafe() {
        String json = JsonMapper.shared()
                .writeValueAsString(plan(ScreeningSummary.Level.CLEAR).plan());
        assertThat(json).contains("Expected below where symptoms began").doesNotContainIgnoringCase("safe");
    }

    @ParameterizedTest
    @EnumSource(names = {"EMERGENCY", "URGENT", "INCOMPLETE", "NO_GLIDES"})
    void nothingIsPlannedPastTheScreening(ScreeningSummary.Level level) {
        CarePlan plan = plan(level).plan();
        assertThat(plan.plan().exercises()).isEmpty();
        assertThat(plan.plan().refused())
                .hasSize(3)
                .allSatisfy(refusal -> assertThat(refusal.reason().rule()).isEqualTo("screening.blocked"));
        assertThat(plan.cautions()).extracting("text").contains("Cannot feel where they wipe.");
    }

    @Test
    void theProbabilitiesOfTheSitesAddUpToOne() {
        CarePlan plan = plan(ScreeningSummary.Level.CLEAR).plan();
        assertThat(plan.sites()).extracting("probability").containsExactly(0.75, 0.25);
        assertThat(plan.sites()).extracting("modelled").containsExactly(true, false);
        assertThat(plan.cautions()).extracting("rule").contains("tolerance.not-modelled", "caution.not-a-diagnosis");
    }

    @Test
    void theSameRequestGivesTheSamePlan() {
        assertThat(plan(ScreeningSummary.Level.CLEAR).plan())
                .isEqualTo(plan(ScreeningSummary.Level.CLEAR).plan());
    }

    private static PlanResult plan(ScreeningSummary.Level level) {
        var sites = List.of(SuspectedSite.named("deep gluteal space", 3), SuspectedSite.named("hip joint", 1));
        OptionalDouble none = OptionalDouble.empty();
        List<Reason> rules = level.blocks()
                ? List.of(Reason.finding("screening.saddle", "Cannot feel where they wipe."))
                : List.of();
        return Planner.plan(
                ChainNerve.withDraws(64),
                new PlanRequest(
                        new ScreeningSummary(level, rules),
                        Findings.right(sites, List.of(Findings.raise(Side.RIGHT, 55, -20)), List.of()),
                        new IrritabilityFindings(
                                none,
                                none,
                                none,
                                none,
                                none,
                                OptionalDouble.of(55),
                                false,
                                Optional.of(Irritability.LOW)),
                        DoseFindings.none(),
                        Glides.three(),
                        new ModelStamp("test", "p", "e", 64, 1)));
    }
}
