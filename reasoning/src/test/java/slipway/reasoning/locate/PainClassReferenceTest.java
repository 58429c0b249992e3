package slipway.reasoning.locate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result.Word;

/** Schäfer, Hall, Briffa: LANSS 12 or more first, then any deficit, then a positive neural test; response 10, 14.3, 55.6, 10 %. */
class PainClassReferenceTest {
    private final Finding weak = Finding.of(FindingKind.STRENGTH, "quadriceps", Side.LEFT, Word.REDUCED);
    private final Finding raise = Finding.of(FindingKind.PROVOCATION, "Lasegue", Side.LEFT, Word.POSITIVE);
    private final Finding hip = Finding.of(FindingKind.PROVOCATION, "faber", Side.LEFT, Word.POSITIVE);

    @Test
    void theClassesAreTriedInOrder() {
        assertThat(PainClass.of(OptionalInt.of(12), List.of(weak, raise)))
                .isEqualTo(PainClass.NEUROPATHIC_SENSITISATION);
        assertThat(PainClass.of(OptionalInt.of(11), List.of(raise, weak))).isEqualTo(PainClass.DENERVATION);
        assertThat(PainClass.of(OptionalInt.empty(), List.of(raise))).isEqualTo(PainClass.SENSITISED_NERVE);
        assertThat(PainClass.of(OptionalInt.empty(), List.of(hip))).isEqualTo(PainClass.MUSCULOSKELETAL);
    }

    @Test
    void theExpectationIsThePublishedOne() {
        assertThat(PainClass.SENSITISED_NERVE.expectation().share()).isEqualTo(0.556);
        assertThat(PainClass.DENERVATION.expectation().share()).isEqualTo(0.143);
    }
}
