package slipway.reasoning.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static slipway.reasoning.Findings.gluteal;
import static slipway.reasoning.Findings.raise;
import static slipway.reasoning.Findings.right;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Side;
import slipway.mechanics.body.Support;
import slipway.mechanics.nerve.NerveModel;
import slipway.reasoning.ChainNerve;
import slipway.reasoning.Glides;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.irritability.IrritabilityReport;
import slipway.reasoning.tolerance.NeuralFindings;
import slipway.reasoning.tolerance.ToleranceEstimator;

/** One exercise for each leading joint, and what is said of the others. */
class SelectionTest {
    private final NerveModel nerve = ChainNerve.withDraws(64);
    private final NeuralFindings neural = right(gluteal(), List.of(raise(Side.RIGHT, 60, -20)), List.of());

    private DosePlan plan(Irritability level, int most, List<ExerciseCandidate> candidates) {
        return DosePlanner.plan(new DoseCase(
                neural,
                ToleranceEstimator.estimate(nerve, neural),
                new IrritabilityReport(level, List.of()),
                DoseFindings.none(),
                candidates,
                Optional.empty(),
                OptionalInt.of(most)));
    }

    private static ExerciseCandidate shortKnee() {
        return new ExerciseCandidate(
                "short knee glide",
                "lying knees bent",
                Support.LYING,
                Position.get("lying knees bent").posture().with(Joint.ANKLE, -20),
                List.of(Glides.move(Joint.KNEE, 80, 60)),
                Purpose.SLIDE);
    }

    private static String passedOver(DosePlan plan, String id) {
        return plan.passedOver().stream()
                .filter(refusal -> refusal.id().equals(id))
                .map(refusal -> refusal.reason().rule())
                .findFirst()
                .orElse("not passed over");
    }

    @Test
    void noJointLeadsTwo() {
        var candidates = List.of(
                shortKnee(),
                Glides.three().get(1),
                Glides.three().get(0),
                Glides.three().get(2));
        DosePlan plan = plan(Irritability.LOW, 3, candidates);
        assertThat(Cases.ids(plan)).containsExactly("ankle glide", "knee glide", "hip glide");
        assertThat(passedOver(plan, "short knee glide")).isEqualTo("choice.less-glide");
    }

    @Test
    void withHighIrritabilityTheMoreWantedOneIsGivenWhateverItsGlide() {
        DosePlan plan =
                plan(Irritability.HIGH, 2, List.of(shortKnee(), Glides.three().get(1)));
        assertThat(Cases.ids(plan)).containsExactly("short knee glide");
        assertThat(passedOver(plan, "knee glide")).isEqualTo("choice.same-joint");
    }

    @Test
    void noMoreAreGivenThanWanted() {
        DosePlan plan = plan(Irritability.LOW, 2, Glides.three());
        assertThat(Cases.ids(plan)).containsExactly("ankle glide", "knee glide");
        assertThat(passedOver(plan, "hip glide")).isEqualTo("choice.enough");
    }
}
