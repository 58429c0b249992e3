package slipway.reasoning.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Side;
import slipway.reasoning.ChainNerve;
import slipway.reasoning.Findings;
import slipway.reasoning.Glides;
import slipway.reasoning.dose.DoseFindings;
import slipway.reasoning.dose.DoseLimit;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.irritability.IrritabilityFindings;
import slipway.reasoning.screening.Answer;
import slipway.reasoning.screening.Region;
import slipway.reasoning.screening.Screening;
import slipway.reasoning.screening.ScreeningInput;
import slipway.reasoning.screening.ScreeningResult;
import slipway.reasoning.screening.ScreeningRules;
import slipway.reasoning.tolerance.SuspectedSite;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlannerTest {
    @Test
    void theJsonHasTheDocumentedKeys() {
        JsonNode json = JsonMapper.shared().valueToTree(clear());
        assertThat(json.propertyNames())
                .containsExactlyInAnyOrder(
                        "screening", "sites", "tolerance", "irritability", "plan", "cautions", "model");
        assertThat(json.at("/screening/level").asString()).isEqualTo("clear");
        assertThat(json.get("screening").propertyNames())
                .containsExactlyInAnyOrder("level", "allows", "notAsked", "open", "rules");
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
                        "netGlideMm",
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
        String json = JsonMapper.shared().writeValueAsString(clear());
        assertThat(json).contains("Expected below where symptoms began").doesNotContainIgnoringCase("safe");
    }

    @Test
    void nothingIsPlannedPastAnAnsweredEmergency() {
        CarePlan plan = plan("saddleNumbness", Answer.YES).plan();
        assertThat(plan.screening().level()).isEqualTo("emergency");
        assertRefused(plan);
        assertThat(plan.screening().rules()).extracting("id").contains("saddleNumbness");
        assertThat(plan.cautions())
                .contains(ScreeningRules.load()
                        .find("saddleNumbness")
                        .orElseThrow()
                        .words()
                        .tellEn());
    }

    @Test
    void nothingIsPlannedPastAnOpenQuestion() {
        CarePlan plan = plan("saddleNumbness", Answer.UNKNOWN).plan();
        assertThat(plan.screening().level()).isEqualTo("incomplete");
        assertRefused(plan);
    }

    @Test
    void noGlidesMeansNone() {
        assertRefused(plan("unhealedNerveRepair", Answer.YES).plan());
    }

    private static void assertRefused(CarePlan plan) {
        assertThat(plan.plan().exercises()).isEmpty();
        assertThat(plan.plan().refused())
                .hasSize(3)
                .allSatisfy(refusal -> assertThat(refusal.reason().rule()).isEqualTo("screening.blocked"));
    }

    /** Numb feet: a level lower (design of the screening rules). */
    @Test
    void theLimitsOfTheScreeningReachTheDose() {
        CarePlan plan = plan("diabetesOrSensoryLoss", Answer.YES).plan();
        assertThat(plan.plan().exercises())
                .isNotEmpty()
                .allSatisfy(
                        exercise -> assertThat(exercise.dose().repetitions()).isEqualTo(3));
        assertThat(clear().plan().exercises())
                .allSatisfy(
                        exercise -> assertThat(exercise.dose().repetitions()).isEqualTo(5));
    }

    @Test
    void everyLimitOfTheScreeningIsUnderstood() {
        ScreeningRules.load().rules().forEach(rule -> DoseLimit.read(rule.dose()));
        assertThatThrownBy(() -> DoseLimit.read(List.of("startLower", "standOnHead")))
                .hasMessageContaining("unknown dose limits standOnHead");
    }

    @Test
    void theProbabilitiesOfTheSitesAddUpToOne() {
        CarePlan plan = clear();
        assertThat(plan.sites()).extracting("probability").containsExactly(0.75, 0.25);
        assertThat(plan.sites()).extracting("modelled").containsExactly(true, false);
        assertThat(plan.cautions())
                .anyMatch(caution -> caution.startsWith("25 % of the suspicion lies on places outside"))
                .anyMatch(caution -> caution.startsWith("This is not a diagnosis"));
    }

    @Test
    void theSameRequestGivesTheSamePlan() {
        assertThat(clear()).isEqualTo(clear());
    }

    private static CarePlan clear() {
        return plan("saddleNumbness", Answer.NO).plan();
    }

    private static PlanResult plan(String question, Answer answer) {
        var sites = List.of(SuspectedSite.named("deep gluteal space", 3), SuspectedSite.named("hip joint", 1));
        OptionalDouble none = OptionalDouble.empty();
        return Planner.plan(
                ChainNerve.withDraws(64),
                new PlanRequest(
                        screening(question, answer),
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

    /** Every question answered no but one. */
    private static ScreeningResult screening(String question, Answer answer) {
        var answers = new HashMap<String, Answer>();
        ScreeningRules.load().listQuestions(Region.LEG).forEach(rule -> answers.put(rule.id(), Answer.NO));
        answers.put(question, answer);
        return Screening.load().evaluate(ScreeningInput.of(Region.LEG, answers));
    }
}
