package slipway.care.record.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import slipway.care.casefile.PartCheck;
import slipway.exercises.yaml.Mistake;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class SectionCheckTest {
    @Test
    void ownMistakesAreToldWithTheirPathAlthoughTheRestIsEmpty() {
        PartCheck check = SectionCheck.of(Section.TOLERANCE, json("""
                        {"sittingMinutes": -3, "tests": [{"test": "slump", "side": "right", "onsetDeg": 400}],
                         "irritability": {"worstPain": 11}}"""), json("{}"));
        assertThat(check.mistakes())
                .extracting(Mistake::path)
                .contains("sittingMinutes", "tests[0].onsetDeg", "irritability.worstPain");
        assertThat(check.missing()).isEmpty();
        assertThat(check.isKeepable()).isFalse();
    }

    @Test
    void halfAnsweredScreeningMayBeKeptAndSaysWhatIsMissing() {
        PartCheck check =
                SectionCheck.of(Section.SCREENING, json("{\"screening\": {\"saddleNumbness\": \"no\"}}"), json("{}"));
        assertThat(check.isKeepable()).isTrue();
        assertThat(check.missing())
                .extracting(Mistake::path)
                .contains("screening.bladderBowelChange")
                .doesNotContain("screening.saddleNumbness");
    }

    @Test
    void misspeltAnswerIsAMistake() {
        PartCheck check =
                SectionCheck.of(Section.SCREENING, json("{\"screening\": {\"saddleNumbness\": \"nope\"}}"), json("{}"));
        assertThat(check.mistakes()).extracting(Mistake::path).containsExactly("screening.saddleNumbness");
    }

    @Test
    void mistakesOfOtherSectionsAreNotTold() {
        PartCheck check = SectionCheck.of(
                Section.HISTORY,
                json("{\"history\": {\"durationWeeks\": 3}}"),
                json("{\"sittingMinutes\": -3, \"examination\": {\"right\": {\"strength\": {\"nonsense\": 5}}}}"));
        assertThat(check.isComplete()).isTrue();
    }

    @Test
    void contradictionWithAnotherSectionIsToldToTheOneThatIsChecked() {
        ObjectNode examination = json(
                "{\"examination\": {\"right\": {\"provocation\": {\"slr\": {\"positive\": \"yes\", \"degrees\": 30}}}}}");
        ObjectNode tests = json("""
                {"tests": [{"test": "straight-leg-raise", "side": "right", "onsetDeg": 70, "symptom": "pain",
                 "familiar": "yes"}]}""");
        assertThat(SectionCheck.of(Section.TOLERANCE, tests, examination).mistakes())
                .singleElement()
                .satisfies(mistake -> {
                    assertThat(mistake.path()).isEqualTo("tests[0]");
                    assertThat(mistake.message()).contains("disagrees").doesNotContain("line");
                });
        assertThat(SectionCheck.of(Section.EXAMINATION, examination, tests).mistakes())
                .singleElement()
                .satisfies(mistake -> assertThat(mistake.path()).isEqualTo("examination.right.provocation.slr"));
        assertThat(SectionCheck.of(Section.TOLERANCE, tests, json("{}")).mistakes())
                .isEmpty();
    }

    @Test
    void keyOfAnotherSectionIsRefused() {
        assertThatThrownBy(() -> SectionCheck.of(Section.SITES, json("{\"tests\": []}"), json("{}")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static ObjectNode json(String text) {
        return (ObjectNode) JsonMapper.shared().readTree(text);
    }
}
