package slipway.reasoning.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.reasoning.Findings;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.tolerance.Movement;

/** A leg raise with the ankle at -20 and the neck at 10 deg began to hurt at 45 deg. */
class GuardsTest {
    @ParameterizedTest
    @CsvSource({
        // posture, allowed at 5 deg, allowed at 10 deg
        "hip 40 ankle -20 neck 10, true, false",
        "hip 35 ankle -20 neck 10, true, true",
        "hip 41 ankle -20 neck 10, false, false",
        // dorsiflexion counts as 8.6 deg at least
        "hip 31 ankle 0 neck 10, true, false",
        "hip 32 ankle 0 neck 10, false, false",
        "hip 26 ankle 0 neck 10, true, true",
        // 40 deg of it as 11.5
        "hip 29 ankle 20 neck 10, false, false",
        // so does the neck
        "hip 32 ankle -20 neck 40, false, false",
        // a bent knee makes it another movement; a slightly bent one does not
        "hip 90 knee 90 ankle -20 neck 10, true, true",
        "hip 45 knee 15 ankle -20 neck 10, false, false",
    })
    void aTestedMovementStaysShortOfItsOnset(String posture, boolean at5, boolean at10) {
        Posture asked = Posture.parse(posture);
        assertThat(guards(Irritability.MODERATE, DoseFindings.none())
                        .forbids(asked)
                        .isEmpty())
                .isEqualTo(at5);
        assertThat(guards(Irritability.HIGH, DoseFindings.none()).forbids(asked).isEmpty())
                .isEqualTo(at10);
    }

    @Test
    void measuredRangesAndProvokingEndPositionsAreKept() {
        var zones = List.of(
                new MeasuredRange(Joint.HIP, Limb.OWN, 80, 140),
                new MeasuredRange(Joint.HIP_ROTATION, Limb.OWN, 20, 60));
        var findings = new DoseFindings(
                OptionalDouble.empty(),
                List.of(new MeasuredRange(Joint.ANKLE, Limb.OWN, -40, 8)),
                List.of(new KeptOut("seated piriformis stretch", "The seated piriformis stretch provokes.", zones)),
                false,
                Set.of());
        Guards guards = guards(Irritability.LOW, findings);
        assertThat(guards.forbids(Posture.parse("knee 90 ankle 8"))).isEmpty();
        assertThat(guards.forbids(Posture.parse("knee 90 ankle 9")))
                .extracting("rule")
                .containsExactly("guard.measured-range");
        assertThat(guards.forbids(Posture.parse("hip 90 knee 90 hip-rotation 10")))
                .isEmpty();
        assertThat(guards.forbids(Posture.parse("hip 90 knee 90 hip-rotation 25")))
                .extracting("rule")
                .containsExactly("guard.end-position");
    }

    @Test
    void aPressureLimitKeepsEverythingBeyondItOut() {
        KeptOut out = KeptOut.from("tarsal", "Provokes.", new Movement(Joint.ANKLE, Limb.OWN, -20, 10));
        assertThat(out.contains(Posture.parse("ankle 10"))).isTrue();
        assertThat(out.contains(Posture.parse("ankle 40"))).isTrue();
        assertThat(out.contains(Posture.parse("ankle 9"))).isFalse();
        KeptOut down = KeptOut.from("foot", "Provokes.", new Movement(Joint.ANKLE, Limb.OWN, 0, -30));
        assertThat(down.contains(Posture.parse("ankle -40"))).isTrue();
        assertThat(down.contains(Posture.parse("ankle -25"))).isFalse();
    }

    @Test
    void aCautionAgainstTheEndOfRangeTakesTenDegreesOff() {
        var ankle = new MeasuredRange(Joint.ANKLE, Limb.OWN, -40, 15);
        var findings = new DoseFindings(OptionalDouble.empty(), List.of(ankle), List.of(), false, Set.of())
                .with(Set.of(DoseLimit.NO_END_RANGE));
        Guards guards = guards(Irritability.LOW, findings);
        assertThat(guards.forbids(Posture.parse("knee 90 ankle 5"))).isEmpty();
        assertThat(guards.forbids(Posture.parse("knee 90 ankle 6"))).isNotEmpty();
    }

    @Test
    void nanIsRefused() {
        assertThatThrownBy(() -> new MeasuredRange(Joint.ANKLE, Limb.OWN, Double.NaN, 8))
                .hasMessageContaining("ankle must be within");
        assertThatThrownBy(() -> new DoseFindings(OptionalDouble.of(Double.NaN), List.of(), List.of(), false, Set.of()))
                .hasMessageContaining("usual pain must be within 0 and 10, was NaN");
        assertThatThrownBy(() -> new Dose(10, 1, 1, Double.NaN)).hasMessageContaining("time above 0 s");
    }

    private static Guards guards(Irritability irritability, DoseFindings findings) {
        var neural = Findings.right(Findings.gluteal(), List.of(Findings.raise(Side.RIGHT, 45, -20)), List.of());
        return Guards.of(neural, findings, irritability, true);
    }
}
