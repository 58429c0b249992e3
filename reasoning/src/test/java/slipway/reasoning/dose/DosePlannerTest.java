package slipway.reasoning.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static slipway.reasoning.Findings.comfortable;
import static slipway.reasoning.Findings.gluteal;
import static slipway.reasoning.Findings.raise;
import static slipway.reasoning.Findings.right;
import static slipway.reasoning.Findings.slump;
import static slipway.reasoning.Findings.with;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Side;
import slipway.mechanics.body.Support;
import slipway.mechanics.nerve.NerveModel;
import slipway.reasoning.ChainNerve;
import slipway.reasoning.Glides;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.irritability.IrritabilityReport;
import slipway.reasoning.tolerance.ComfortablePosition;
import slipway.reasoning.tolerance.NeuralFindings;
import slipway.reasoning.tolerance.NeuralTest;
import slipway.reasoning.tolerance.RemoteChange;
import slipway.reasoning.tolerance.SuspectedSite;
import slipway.reasoning.tolerance.SymptomResponse;
import slipway.reasoning.tolerance.ToleranceEstimate;
import slipway.reasoning.tolerance.ToleranceEstimator;

class DosePlannerTest {
    private final NerveModel nerve = ChainNerve.withDraws(64);

    /** Common practice: ankle, then knee, then hip for the back-of-leg nerve. */
    @ParameterizedTest
    @CsvSource({"deep gluteal space", "root L5 at foramen", "root S1 at foramen", "sacral plexus"})
    void theAnkleComesFirstThenKneeThenHipForRootAndGlutealSites(String site) {
        assertThat(Cases.ids(plan(at(site, 60), Irritability.LOW, Glides.three())))
                .containsExactly("ankle glide", "knee glide", "hip glide");
    }

    /** Common practice: hip or knee first for the fibular neck and the tarsal tunnel. */
    @ParameterizedTest
    @CsvSource({"fibular neck", "tarsal tunnel"})
    void hipOrKneeComesFirstForSitesNearTheFoot(String site) {
        assertThat(Cases.ids(plan(at(site, 60), Irritability.LOW, Glides.three()))
                        .get(0))
                .isIn("hip glide", "knee glide");
    }

    /** Common practice: lying is tolerated best, then sitting. */
    @Test
    void lyingComesBeforeSitting() {
        var neural = right(
                gluteal(), List.of(raise(Side.RIGHT, 60, -20), slump(Side.RIGHT, 5)), List.of(comfortable("sitting")));
        var candidates = List.of(Glides.sittingKnee(), Glides.ankle());
        assertThat(Cases.ids(plan(neural, Irritability.LOW, candidates)))
                .containsExactly("ankle glide", "sitting knee glide");
        DosePlan irritable = plan(neural, Irritability.HIGH, candidates);
        assertThat(Cases.refusal(irritable, "sitting knee glide")).isEqualTo("start.lying");
    }

    /** Common practice: 10 per movement, 3 to 5 for whoever cannot; 1 to 3 times a day; slow, never held. */
    @ParameterizedTest
    @CsvSource({"HIGH, 3, 5, 1, 0.6", "MODERATE, 5, 8, 2, 0.8", "LOW, 10, 10, 3, 0.95"})
    void theFirstDoseFollowsTheIrritability(
            Irritability irritability, int repetitions, int most, int mostSessions, double fraction) {
        Dose dose = plan(at("deep gluteal space", 60), irritability, Glides.three())
                .exercises()
                .get(0)
                .dose();
        assertThat(dose).isEqualTo(new Dose(repetitions, 1, 1, 3));
        StartRule rule = StartRule.of(irritability);
        assertThat(rule.repetitionsHigh()).isEqualTo(most);
        assertThat(rule.sessionsHigh()).isEqualTo(mostSessions);
        assertThat(rule.fraction()).isEqualTo(fraction);
    }

    @Test
    void aToleranceMeasuredLyingIsNotUsedInSitting() {
        DosePlan plan = plan(at("deep gluteal space", 60), Irritability.LOW, List.of(Glides.sittingKnee()));
        assertThat(Cases.refusal(plan, "sitting knee glide")).isEqualTo("range.no-tolerance");
    }

    /** From comfortable sitting the nerve may be let go, but not loaded further. */
    @Test
    void comfortInAPositionAllowsTheMovementsThatAddNothing() {
        var neural = right(gluteal(), List.of(raise(Side.RIGHT, 60, -20)), List.of(comfortable("sitting")));
        var pointing = new ExerciseCandidate(
                "pointing in sitting",
                "sitting",
                Support.SITTING,
                Position.get("sitting").posture(),
                List.of(Glides.move(Joint.ANKLE, 0, -30)),
                Purpose.SLIDE);
        DosePlan plan = plan(neural, Irritability.LOW, List.of(pointing, Glides.sittingKnee()));
        assertThat(Cases.ids(plan)).containsExactly("pointing in sitting");
        assertThat(Cases.refusal(plan, "sitting knee glide")).isEqualTo("range.too-much");
    }

    @Test
    void aCrossedRaiseKeepsTheOtherLegOut() {
        var candidates = List.of(Glides.ankle(), Glides.otherHip());
        assertThat(Cases.ids(plan(at("deep gluteal space", 45), Irritability.LOW, candidates)))
                .contains("other leg glide");
        var crossed = right(
                gluteal(),
                List.of(raise(Side.RIGHT, 45, -20), raise(Side.LEFT, 60, -20, SymptomResponse.CROSSED_SYMPTOM)),
                List.of());
        DosePlan plan = plan(crossed, Irritability.LOW, candidates);
        assertThat(Cases.refusal(plan, "other leg glide")).isEqualTo("guard.crossed-raise");
        assertThat(plan.notes()).anySatisfy(note -> assertThat(note.text()).contains("not to be moved instead"));
    }

    @Test
    void noNeckLedMovementBeforeANeckScreen() {
        var neural = at("deep gluteal space", 60);
        assertThat(Cases.refusal(plan(neural, Irritability.LOW, List.of(Glides.neck())), "neck glide"))
                .isEqualTo("guard.neck-screen");
        var screened = new DoseFindings(OptionalDouble.empty(), List.of(), List.of(), true, Set.of());
        assertThat(Cases.ids(Cases.plan(nerve, neural, Irritability.LOW, screened, List.of(Glides.neck()))))
                .contains("neck glide");
    }

    @Test
    void bothEndsTogetherAreNoStart() {
        var tension = new ExerciseCandidate(
                "both ends",
                "lying",
                Support.LYING,
                Position.get("lying").posture(),
                List.of(Glides.move(Joint.HIP, 0, 60), Glides.move(Joint.ANKLE, -20, 10)),
                Purpose.TENSION);
        assertThat(Cases.refusal(plan(at("deep gluteal space", 60), Irritability.LOW, List.of(tension)), "both ends"))
                .isEqualTo("start.both-ends");
    }

    @Test
    void strongUsualPainStartsOnlyUnderSupervision() {
        var strong = new DoseFindings(OptionalDouble.of(7), List.of(), List.of(), false, Set.of());
        var less = new DoseFindings(OptionalDouble.of(6.5), List.of(), List.of(), false, Set.of());
        var neural = at("deep gluteal space", 60);
        DosePlan plan = Cases.plan(nerve, neural, Irritability.MODERATE, strong, Glides.three());
        assertThat(plan.exercises()).isEmpty();
        assertThat(Cases.refusal(plan, "ankle glide")).isEqualTo("start.usual-pain");
        assertThat(Cases.plan(nerve, neural, Irritability.MODERATE, less, Glides.three())
                        .exercises())
                .isNotEmpty();
    }

    @Test
    void withSymptomsAtRestOnlyARemoteJointMoves() {
        var neural = new NeuralFindings(
                Side.RIGHT,
                gluteal(),
                Position.get("lying").posture(),
                List.of(raise(Side.RIGHT, 45, -20)),
                List.of(),
                true,
                List.of());
        DosePlan plan = plan(neural, Irritability.MODERATE, Glides.three());
        assertThat(Cases.refusal(plan, "hip glide")).isEqualTo("start.symptoms-at-rest");
        assertThat(Cases.refusal(plan, "knee glide")).isEqualTo("start.symptoms-at-rest");
        plan.exercises()
                .forEach(dosed -> assertThat(dosed.range().effect().limitPct()).isEqualTo(0.2));
    }

    @Test
    void whatIsNotNerveGetsNoGlides() {
        var tests = List.<NeuralTest>of(
                with(raise(Side.RIGHT, 60, -20), RemoteChange.UNCHANGED),
                with(slump(Side.RIGHT, 20), RemoteChange.UNCHANGED));
        var neural = new NeuralFindings(
                Side.RIGHT,
                gluteal(),
                Position.get("lying").posture(),
                tests,
                List.<ComfortablePosition>of(),
                false,
                List.of("hip joint"));
        assertThat(Cases.refusal(plan(neural, Irritability.LOW, Glides.three()), "hip glide"))
                .isEqualTo("start.not-nerve");
    }

    @Test
    void whatIsMostlyOutsideTheModelIsReviewed() {
        var sites = List.of(SuspectedSite.named("deep gluteal space", 1), SuspectedSite.named("hip joint", 1));
        var neural = right(sites, List.of(raise(Side.RIGHT, 60, -20)), List.of());
        assertThat(Cases.refusal(plan(neural, Irritability.LOW, Glides.three()), "hip glide"))
                .isEqualTo("start.mostly-not-modelled");
        var outside = right(List.of(SuspectedSite.named("hip joint", 1)), List.of(), List.of());
        assertThat(plan(outside, Irritability.LOW, Glides.three()).exercises()).isEmpty();
    }

    @Test
    void aHeldJointIsEasedWhenItsUsualAngleLeavesNoRoom() {
        ExerciseCandidate fixed = Glides.knee();
        var eased = new ExerciseCandidate(
                "eased",
                "lying",
                Support.LYING,
                fixed.base().with(Joint.HIP, 90),
                fixed.moves(),
                Purpose.SLIDE,
                Optional.of(Glides.move(Joint.HIP, 90, 30)));
        var neural = at("deep gluteal space", 40);
        DesignedRange range = plan(neural, Irritability.MODERATE, List.of(eased))
                .exercises()
                .get(0)
                .range();
        double heldDeg = range.end().angleDeg(Joint.HIP);
        assertThat(heldDeg).isLessThan(90).isGreaterThanOrEqualTo(30);
        assertThat(range.candidate().start().angleDeg(Joint.HIP)).isEqualTo(heldDeg);
        assertThat(range.reasons()).extracting("rule").contains("range.eased");
        // No other angle of the hip that may be tried slides the nerve further.
        for (double hip = 90; hip >= 30; hip -= 10) {
            var at = new ExerciseCandidate(
                    "at", "lying", Support.LYING, fixed.base().with(Joint.HIP, hip), fixed.moves(), Purpose.SLIDE);
            plan(neural, Irritability.MODERATE, List.of(at))
                    .exercises()
                    .forEach(other -> assertThat(
                                    other.range().effect().glideMm().median())
                            .isLessThanOrEqualTo(range.effect().glideMm().median()));
        }
    }

    @Test
    void limitsOfTheScreeningAreKept() {
        var neural = right(
                gluteal(), List.of(raise(Side.RIGHT, 60, -20), slump(Side.RIGHT, 5)), List.of(comfortable("sitting")));
        var slumped = new ExerciseCandidate(
                "slumped",
                "slump",
                Support.SITTING,
                Position.get("slump").posture(),
                List.of(Glides.move(Joint.KNEE, 90, 40)),
                Purpose.SLIDE);
        var candidates = List.of(Glides.ankle(), Glides.sittingKnee(), slumped);
        assertThat(limited(neural, DoseLimit.NO_SLUMP, candidates)).contains("sitting knee glide", "ankle glide");
        assertThat(limited(neural, DoseLimit.NO_SLUMP, candidates)).doesNotContain("slumped");
        assertThat(limited(neural, DoseLimit.LYING_ONLY, candidates)).containsExactly("ankle glide");
        assertThat(limited(neural, DoseLimit.NO_LEG_LOADING, candidates)).isEmpty();
    }

    private List<String> limited(NeuralFindings neural, DoseLimit limit, List<ExerciseCandidate> candidates) {
        DoseFindings findings = DoseFindings.none().with(Set.of(limit));
        return Cases.ids(Cases.plan(nerve, neural, Irritability.LOW, findings, candidates));
    }

    @Test
    void whenTheSmallestRangeIsTooMuchItSaysSoAndProposes() {
        DosePlan plan = plan(at("deep gluteal space", 8), Irritability.HIGH, Glides.three());
        assertThat(plan.refused()).isNotEmpty();
        assertThat(plan.refused())
                .allSatisfy(
                        refusal -> assertThat(refusal.reason().text()).contains("Even the smallest range is too much"));
        assertThat(plan.notes()).extracting("rule").contains("plan.instead");
    }

    /** A movement of the ankle hardly slides the nerve at the buttock: for comfort only, never maximised. */
    @Test
    void aMovementThatShowsNoGlideIsNotMaximised() {
        var small = new ExerciseCandidate(
                "small ankle",
                "lying",
                Support.LYING,
                Position.get("lying").posture(),
                List.of(Glides.move(Joint.ANKLE, -20, 10)),
                Purpose.SLIDE);
        DosePlan plan = plan(at("conus", 80), Irritability.LOW, List.of(small));
        DesignedRange range = plan.exercises().get(0).range();
        assertThat(range.effect().movementShown()).isFalse();
        // Two thirds of 30 deg, though the whole range would stay below the limit.
        assertThat(Cases.travelDeg(plan, "small ankle")).isEqualTo(20);
        assertThat(range.effect().probabilityAboveLimit()).isZero();
        assertThat(range.reasons()).extracting("rule").contains("range.comfort", "range.no-movement-shown");
    }

    @Test
    void severalJointsAreRoundedInward() {
        var neural = right(gluteal(), List.of(slump(Side.RIGHT, 10)), List.of());
        DesignedRange range = plan(neural, Irritability.LOW, List.of(Glides.sittingKnee()))
                .exercises()
                .get(0)
                .range();
        double kneeDeg = range.end().angleDeg(Joint.KNEE);
        double ankleDeg = range.end().angleDeg(Joint.ANKLE);
        assertThat(kneeDeg % 5).isZero();
        assertThat(ankleDeg % 5).isZero();
        assertThat(ankleDeg).isGreaterThanOrEqualTo(-20 * (90 - kneeDeg) / 90);
    }

    @Test
    void aPlanOfThreeGlidesSolvesFewPostures() {
        var neural = right(
                gluteal(),
                List.of(raise(Side.RIGHT, 60, -20), raise(Side.RIGHT, 50, 10), slump(Side.RIGHT, 20)),
                List.of(comfortable("sitting")));
        ToleranceEstimate estimate = ToleranceEstimator.estimate(nerve, neural);
        DosePlanner.plan(new DoseCase(
                neural,
                estimate,
                new IrritabilityReport(Irritability.LOW, List.of()),
                DoseFindings.none(),
                Glides.three(),
                Optional.empty()));
        assertThat(estimate.draws().orElseThrow().solvedPostures()).isLessThan(100);
    }

    @Test
    void theSameExerciseTwiceIsRefused() {
        assertThatThrownBy(
                        () -> plan(at("deep gluteal space", 60), Irritability.LOW, List.of(Glides.hip(), Glides.hip())))
                .hasMessageContaining("the exercise hip glide is offered twice");
    }

    @Test
    void everyPublicTableHasItsMark() {
        assertThat(Coefficients.load("dose.csv").all())
                .allSatisfy(row -> assertThat(row.mark()).isIn("seen", "memory", "common practice", "assumption"));
        // Boyd & Villa 2012: 57.1 - 48.5 = 8.6 deg.
        assertThat(DoseData.value("dorsiflexion-cost")).isEqualTo(8.6);
    }

    private DosePlan plan(NeuralFindings neural, Irritability irritability, List<ExerciseCandidate> candidates) {
        return Cases.plan(nerve, neural, irritability, DoseFindings.none(), candidates);
    }

    private static NeuralFindings at(String site, double onsetDeg) {
        return right(List.of(SuspectedSite.named(site, 1)), List.of(raise(Side.RIGHT, onsetDeg, -20)), List.of());
    }
}
