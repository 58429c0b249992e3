package slipway.reasoning.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Result.Grade;
import slipway.reasoning.findings.Result.Word;

class VocabularyTest {
    private final Vocabulary vocabulary = Vocabulary.load();

    @Test
    void understandsSingleTargetsGroupsSynonymsRangesAndPlaces() {
        assertThat(vocabulary
                        .find(FindingKind.STRENGTH, "Tibialis anterior")
                        .orElseThrow()
                        .how())
                .isEqualTo(Term.How.TARGET);
        assertThat(vocabulary
                        .find(FindingKind.STRENGTH, "foot drop")
                        .orElseThrow()
                        .key())
                .isEqualTo("ankle_dorsiflexors");
        assertThat(vocabulary
                        .find(FindingKind.SENSATION, "L4_to_S1_dermatomes")
                        .orElseThrow()
                        .members())
                .containsOnlyKeys("L4_dermatome", "L5_dermatome", "S1_dermatome");
        assertThat(vocabulary
                        .find(FindingKind.STRENGTH, "L5_S1_muscles")
                        .orElseThrow()
                        .members())
                .containsKeys("extensor_hallucis_longus", "gastrocnemius");
        assertThat(vocabulary
                        .find(FindingKind.PROVOCATION, "tinel_over_the_fibular_head")
                        .orElseThrow()
                        .key())
                .isEqualTo("tinel_fibular_head");
        assertThat(vocabulary.find(FindingKind.SYMPTOM, "lateral_foot")).isPresent();
        assertThat(vocabulary.find(FindingKind.PROVOCATION, "palpation_moon")).isEmpty();
        assertThat(vocabulary.find(FindingKind.SENSATION, "S1_to_L4_dermatomes"))
                .isEmpty();
    }

    @Test
    void understandsOlderNamesSuffixesAndPlacesInsideLongerNames() {
        assertThat(key(FindingKind.STRENGTH, "peroneus_longus")).isEqualTo("fibularis_longus");
        assertThat(key(FindingKind.STRENGTH, "hip abductor strength")).isEqualTo("hip_abductors");
        assertThat(key(FindingKind.REFLEX, "ankle_reflex")).isEqualTo("achilles");
        assertThat(key(FindingKind.PROVOCATION, "tinel_posterior_tibial_nerve_at_ankle"))
                .isEqualTo("tinel_tibial_nerve");
        assertThat(ResultReader.read(FindingKind.STRENGTH, "3-4")).contains(new Grade(3.5));
        assertThat(ResultReader.read(FindingKind.STRENGTH, "4-3")).isEmpty();
        assertThat(ResultReader.read(FindingKind.REFLEX, "1+")).contains(Word.REDUCED);
    }

    private String key(FindingKind kind, String word) {
        return vocabulary.find(kind, word).orElseThrow().key();
    }

    @Test
    void namesTheNearestWordForAMisspeltOne() {
        assertThat(vocabulary.nearest(FindingKind.STRENGTH, "tibialis anteror")).contains("tibialis_anterior");
        assertThat(vocabulary.nearest(FindingKind.STRENGTH, "zzzzzzzzz")).isEmpty();
    }

    @Test
    void readsResultsAsExaminersWriteThem() {
        assertThat(ResultReader.read(FindingKind.STRENGTH, "4+").orElseThrow().text())
                .isEqualTo("4+");
        assertThat(ResultReader.read(FindingKind.STRENGTH, "3-/5").orElseThrow().text())
                .isEqualTo("3-");
        assertThat(ResultReader.read(FindingKind.STRENGTH, "4/5")).contains(new Grade(4));
        assertThat(ResultReader.read(FindingKind.REFLEX, "brisk")).contains(Word.INCREASED);
        assertThat(ResultReader.read(FindingKind.STRENGTH, "brisk")).isEmpty();
        assertThat(ResultReader.read(FindingKind.PROVOCATION, "false")).contains(Word.NEGATIVE);
        assertThatThrownBy(() -> ResultReader.read(FindingKind.STRENGTH, "6"))
                .hasMessageContaining("grade must be within 0 and 5, was 6");
    }

    @Test
    void findsAllContradictionsAndUnknownWordsAtOnce() {
        var findings = List.of(
                at(FindingKind.STRENGTH, "ankle_dorsiflexors", new Grade(3), "line 4"),
                at(FindingKind.STRENGTH, "foot_drop", new Grade(5), "line 5"),
                at(FindingKind.REFLEX, "achiles", Word.ABSENT, "line 9"));
        assertThat(FindingChecks.mistakes(findings, vocabulary))
                .hasSize(2)
                .anySatisfy(text -> assertThat(text).contains("nearest known: achilles", "line 9"))
                .anySatisfy(text -> assertThat(text).contains("contradicts", "line 4", "line 5"));
    }

    @Test
    void refusesResultsThatAnItemCannotHave() {
        assertThatThrownBy(() -> Finding.of(FindingKind.REFLEX, "achilles", Side.LEFT, new Grade(4)))
                .hasMessageContaining("cannot be \"4\"");
        assertThatThrownBy(() -> new Finding(
                        FindingKind.PROVOCATION,
                        "slr",
                        Side.LEFT,
                        Word.POSITIVE,
                        OptionalDouble.of(Double.NaN),
                        "line 3"))
                .hasMessageContaining("within -60 and 180 deg");
    }

    private static Finding at(FindingKind kind, String target, Result result, String location) {
        return new Finding(kind, target, Side.LEFT, result, OptionalDouble.empty(), location);
    }
}
