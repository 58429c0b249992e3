package slipway.reasoning.dose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.mechanics.motion.Motion;
import slipway.mechanics.nerve.NerveModel;
import slipway.reasoning.ChainNerve;
import slipway.reasoning.Findings;
import slipway.reasoning.Glides;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.irritability.IrritabilityReport;
import slipway.reasoning.tolerance.LoadDraws;
import slipway.reasoning.tolerance.NeuralFindings;
import slipway.reasoning.tolerance.NeuralTest;
import slipway.reasoning.tolerance.SuspectedSite;
import slipway.reasoning.tolerance.SymptomResponse;
import slipway.reasoning.tolerance.TestFamily;
import slipway.reasoning.tolerance.ToleranceEstimate;
import slipway.reasoning.tolerance.ToleranceEstimator;

/** What must hold for everybody, on seeded invented people. */
class DosePropertyTest {
    private static final List<String> SITES =
            List.of("root L5 at foramen", "deep gluteal space", "posterior mid-thigh", "fibular neck", "tarsal tunnel");
    private static final List<ExerciseCandidate> CANDIDATES =
            List.of(Glides.ankle(), Glides.knee(), Glides.hip(), Glides.otherHip(), Glides.sittingKnee());
    private static final NerveModel NERVE = ChainNerve.withDraws(32);

    private record Someone(NeuralFindings neural, DoseFindings dose, Irritability irritability) {
        static Someone random(SplittableRandom random) {
            var tests = new ArrayList<NeuralTest>();
            tests.add(Findings.raise(Side.RIGHT, 20 + random.nextInt(60), -20));
            if (random.nextBoolean()) {
                tests.add(Findings.raise(Side.RIGHT, 20 + random.nextInt(60), 5));
            }
            if (random.nextBoolean()) {
                tests.add(Findings.raise(Side.RIGHT, 20 + random.nextInt(60), -10, SymptomResponse.NONE));
            }
            if (random.nextBoolean()) {
                tests.add(Findings.slump(Side.RIGHT, random.nextInt(60)));
            }
            var sites = List.of(
                    SuspectedSite.named(SITES.get(random.nextInt(SITES.size())), 1),
                    SuspectedSite.named("hip joint", 0.1 + 0.5 * random.nextDouble()));
            var ankle = new MeasuredRange(Joint.ANKLE, Limb.OWN, -50, random.nextInt(20));
            var dose = new DoseFindings(OptionalDouble.empty(), List.of(ankle), List.of(), false, Set.of());
            var levels = Irritability.values();
            return new Someone(Findings.right(sites, tests, List.of()), dose, levels[random.nextInt(levels.length)]);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
    void guardsAndTheChanceHoldAlongEveryMotion(long seed) {
        Someone someone = Someone.random(new SplittableRandom(seed));
        ToleranceEstimate estimate = ToleranceEstimator.estimate(NERVE, someone.neural);
        DosePlan plan = DosePlanner.plan(new DoseCase(
                someone.neural,
                estimate,
                new IrritabilityReport(someone.irritability, List.of()),
                someone.dose,
                CANDIDATES,
                Optional.empty()));
        assertThat(plan.exercises().size() + plan.refused().size()).isEqualTo(CANDIDATES.size());
        for (DosedExercise dosed : plan.exercises()) {
            List<Posture> motion = everyDegree(dosed.range().motion(3));
            checkAngles(dosed.range());
            motion.forEach(posture -> checkGuards(someone, posture));
            checkChance(someone, estimate.draws().orElseThrow(), dosed.range(), motion);
        }
    }

    private static List<Posture> everyDegree(Motion motion) {
        return motion.sampled(181);
    }

    private static void checkAngles(DesignedRange range) {
        range.candidate().moves().forEach(move -> {
            double angle = range.end().angleDeg(move.joint(), move.limb());
            assertThat(angle % 5).isZero();
            assertThat(move.direction() * (move.toDeg() - angle)).isGreaterThanOrEqualTo(0);
        });
    }

    /** Written again from the rule, for leg raises with a straight knee and without more dorsiflexion than any test. */
    private static void checkGuards(Someone someone, Posture posture) {
        double margin = someone.irritability == Irritability.HIGH ? 10 : 5;
        assertThat(posture.angleDeg(Joint.ANKLE))
                .isLessThanOrEqualTo(someone.dose.ranges().get(0).highDeg());
        for (NeuralTest test : someone.neural.ownTests()) {
            boolean raise = test.movement().joint() == Joint.HIP && test.response() == SymptomResponse.FAMILIAR_SYMPTOM;
            double ankle = posture.angleDeg(Joint.ANKLE) - test.start().angleDeg(Joint.ANKLE);
            boolean sameMovement = posture.angleDeg(Joint.KNEE) <= 20 && ankle >= -20;
            if (raise && sameMovement) {
                assertThat(posture.angleDeg(Joint.HIP)).isLessThanOrEqualTo(test.reachedDeg() - margin + 0.001);
            }
        }
    }

    /** Sums the weights again, from postures that the search did not visit. */
    private static void checkChance(Someone someone, LoadDraws draws, DesignedRange range, List<Posture> motion) {
        double fraction = StartRule.of(someone.irritability).fraction();
        double[] tolerance =
                draws.tolerancePct(TestFamily.of(range.candidate().start())).orElseThrow();
        double[] weights = draws.weights();
        double[] peak = new double[weights.length];
        Arrays.fill(peak, Double.NEGATIVE_INFINITY);
        for (Posture posture : motion) {
            double[] load = draws.loadPct(posture);
            for (int i = 0; i < peak.length; i++) {
                peak[i] = Math.max(peak[i], load[i]);
            }
        }
        double below = 0;
        for (int i = 0; i < peak.length; i++) {
            // Rounding of angles between keys.
            below += peak[i] <= fraction * tolerance[i] + 1e-9 ? weights[i] : 0;
        }
        assertThat(below).isGreaterThanOrEqualTo(0.9 - 1e-9);
        assertThat(range.effect().probabilityAboveLimit()).isLessThanOrEqualTo(0.1 + 1e-9);
        assertThat(range.effect().movementShown())
                .isEqualTo(range.effect().glideMm().median() >= 0.5);
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void moreIrritabilityNeverGivesALargerRange(long seed) {
        Someone someone = Someone.random(new SplittableRandom(seed));
        for (ExerciseCandidate candidate : CANDIDATES) {
            double high = travel(someone.neural, someone.dose, Irritability.HIGH, candidate);
            double moderate = travel(someone.neural, someone.dose, Irritability.MODERATE, candidate);
            double low = travel(someone.neural, someone.dose, Irritability.LOW, candidate);
            assertThat(high).isLessThanOrEqualTo(moderate);
            assertThat(moderate).isLessThanOrEqualTo(low);
        }
    }

    @Test
    void anEarlierOnsetNeverGivesALargerRange() {
        for (ExerciseCandidate candidate : Glides.three()) {
            double before = 0;
            for (int onset = 10; onset <= 90; onset += 4) {
                var neural =
                        Findings.right(Findings.gluteal(), List.of(Findings.raise(Side.RIGHT, onset, -20)), List.of());
                double now = travel(neural, DoseFindings.none(), Irritability.LOW, candidate);
                assertThat(now).isGreaterThanOrEqualTo(before);
                before = now;
            }
            assertThat(before).isPositive();
        }
    }

    private static double travel(
            NeuralFindings neural, DoseFindings findings, Irritability irritability, ExerciseCandidate candidate) {
        return Cases.travelDeg(Cases.plan(NERVE, neural, irritability, findings, List.of(candidate)), candidate.id());
    }
}
