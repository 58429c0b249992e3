package slipway.care.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slipway.exercises.yaml.YamlDocument;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result.Grade;
import slipway.reasoning.findings.Result.Word;
import slipway.reasoning.screening.Answer;
import slipway.reasoning.screening.Level;
import slipway.reasoning.screening.Screening;
import slipway.reasoning.screening.ScreeningInput;
import tools.jackson.databind.node.ObjectNode;

class CasePartsTest {
    private static ObjectNode tree(String yaml) {
        return (ObjectNode)
                YamlDocument.read("test", yaml.getBytes(StandardCharsets.UTF_8)).root();
    }

    @Test
    void findingsOfAPartAreThoseOfTheWholeFile() {
        String text = CaseText.complete();
        CaseFile whole = CaseFiles.read(text.getBytes(StandardCharsets.UTF_8), "test");
        // The whole file tells lines, a part tells paths; everything else is the same.
        assertThat(CaseParts.findings(tree(text)))
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("location")
                .isEqualTo(whole.examination().findings())
                .isNotEmpty();
    }

    @Test
    void findingsKeepGradesAnglesAndPlaces() {
        ObjectNode part = tree("""
                examination:
                  left:
                    strength: {ankle_dorsiflexors: "4+"}
                    reflexes: {achilles: reduced}
                    provocation: {slr: {positive: yes, degrees: 42}}
                """);
        assertThat(CaseParts.findings(part))
                .containsExactly(
                        new Finding(
                                FindingKind.STRENGTH,
                                "ankle_dorsiflexors",
                                Side.LEFT,
                                new Grade(4 + 1.0 / 3),
                                OptionalDouble.empty(),
                                "examination.left.strength.ankle_dorsiflexors"),
                        new Finding(
                                FindingKind.REFLEX,
                                "achilles",
                                Side.LEFT,
                                Word.REDUCED,
                                OptionalDouble.empty(),
                                "examination.left.reflexes.achilles"),
                        new Finding(
                                FindingKind.PROVOCATION,
                                "slr",
                                Side.LEFT,
                                Word.POSITIVE,
                                OptionalDouble.of(42),
                                "examination.left.provocation.slr"));
    }

    @Test
    void whatIsNoFindingIsLeftOut() {
        ObjectNode part = tree("""
                examination:
                  right:
                    strength: {ankle_dorsiflexors: 7, no_such_muscle: 4, knee_extensors: 4}
                """);
        assertThat(CaseParts.findings(part)).extracting(Finding::target).containsExactly("knee_extensors");
        assertThat(CaseParts.findings(tree("history: {work: office}"))).isEmpty();
    }

    @Test
    void screeningOfAnEmptyCaseIsIncomplete() {
        ScreeningInput input = CaseParts.screeningInput(tree("history: {work: office}"), OptionalInt.empty());
        assertThat(input.answers()).isEmpty();
        assertThat(input.wells()).isEmpty();
        assertThat(Screening.load().evaluate(input).level()).isEqualTo(Level.INCOMPLETE);
    }

    @Test
    void screeningOfAPartIsThatOfTheWholeFile() {
        String text = CaseText.complete();
        CaseFile whole = CaseFiles.read(text.getBytes(StandardCharsets.UTF_8), "test");
        ScreeningInput expected = whole.screeningInput();
        ScreeningInput input = CaseParts.screeningInput(tree(text), expected.ageYears());
        assertThat(input.answers()).isEqualTo(expected.answers()).isNotEmpty();
        assertThat(Screening.load().evaluate(input).level())
                .isEqualTo(Screening.load().evaluate(expected).level());
    }

    @Test
    void aClearanceThatIsNotWholeClearsNothing() {
        ObjectNode part = tree("""
                screening: {nightPain: yes}
                clearances:
                  - {rule: nightPain, who: physician, when: "2026-13-01", outcome: looked into}
                """);
        ScreeningInput input = CaseParts.screeningInput(part, OptionalInt.of(46));
        assertThat(input.answers()).containsEntry("nightPain", Answer.YES);
        assertThat(input.clearances()).isEqualTo(List.of());
        assertThat(input.ageYears()).hasValue(46);
    }
}
