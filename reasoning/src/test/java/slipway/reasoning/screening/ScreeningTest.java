package slipway.reasoning.screening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result;
import slipway.reasoning.findings.Result.Grade;
import slipway.reasoning.findings.Result.Word;

class ScreeningTest {
    private final ScreeningRules rules = ScreeningRules.load();
    private final Screening screening = Screening.load();

    @Test
    void unansweredQuestionsAreIncompleteAndAnsweredOnesClear() {
        assertThat(screening.evaluate(ScreeningInput.of(Region.LEG, Map.of())).level())
                .isEqualTo(Level.INCOMPLETE);
        ScreeningResult all = screening.evaluate(ScreeningInput.of(Region.LEG, allNo(Region.LEG)));
        assertThat(all.level()).isEqualTo(Level.CLEAR);
        assertThat(all.notAsked()).isEmpty();
        assertThat(rules.listRequired(Region.LEG)).noneMatch(rule -> rule.id().equals("chestPain"));
        assertThat(rules.listRequired(Region.ARM)).anyMatch(rule -> rule.id().equals("chestPain"));
    }

    @Test
    void everyEmergencyAndUrgentQuestionRaisesItsLevelEvenWhenTheRestWasNotAsked() {
        for (ScreeningRule rule : rules.listRequired(Region.ANY)) {
            ScreeningResult result = screening.evaluate(ScreeningInput.of(Region.ANY, Map.of(rule.id(), Answer.YES)));
            assertThat(result.level()).as(rule.id()).isEqualTo(rule.level());
            assertThat(result.level().blocksPlan()).isTrue();
        }
    }

    @Test
    void aClearanceLowersAWeakKeyMuscleToACaution() {
        var weak = List.of(strength("ankle_dorsiflexors", new Grade(3)));
        assertThat(evaluate(weak, List.of()).level()).isEqualTo(Level.URGENT);
        var clearance = new Clearance("keyMuscleWeak", "physician 7", LocalDate.of(2026, 3, 1), "old and stable");
        ScreeningResult cleared = evaluate(weak, List.of(clearance));
        assertThat(cleared.level()).isEqualTo(Level.CAUTION);
        assertThat(cleared.listDoseLimits()).contains("handSupport");
        assertThat(evaluate(List.of(strength("ankle_dorsiflexors", new Grade(4))), List.of())
                        .level())
                .isEqualTo(Level.CLEAR);
    }

    @Test
    void weaknessWithoutAGradeLeavesTheScreeningOpen() {
        ScreeningResult result = evaluate(List.of(strength("foot_drop", Word.REDUCED)), List.of());
        assertThat(result.level()).isEqualTo(Level.INCOMPLETE);
        assertThat(result.openPoints()).singleElement().asString().contains("grade needed");
    }

    @Test
    void signsFoundOnExaminationCount() {
        var saddle = Finding.of(FindingKind.SENSATION, "perianal", Side.LEFT, Word.REDUCED);
        assertThat(evaluate(List.of(saddle), List.of()).level()).isEqualTo(Level.EMERGENCY);
        var normal = Finding.of(FindingKind.SENSATION, "perianal", Side.LEFT, Word.NORMAL);
        assertThat(evaluate(List.of(normal), List.of()).level()).isEqualTo(Level.CLEAR);
        var left = strength("gastrocnemius", new Grade(2));
        assertThat(evaluate(List.of(left, left.mirrored()), List.of()).level()).isEqualTo(Level.EMERGENCY);
    }

    @Test
    void twoSoftFlagsTogetherAreUrgentAndOneIsACaution() {
        Map<String, Answer> answers = allNo(Region.LEG);
        answers.put("nightPain", Answer.YES);
        assertThat(screening.evaluate(ScreeningInput.of(Region.LEG, answers)).level())
                .isEqualTo(Level.CAUTION);
        answers.put("weightLoss", Answer.YES);
        assertThat(screening.evaluate(ScreeningInput.of(Region.LEG, answers)).level())
                .isEqualTo(Level.URGENT);
    }

    @Test
    void noGlidesRulesBarGlidesWithoutStoppingOtherCare() {
        Map<String, Answer> answers = allNo(Region.LEG);
        answers.put("unstableSpine", Answer.YES);
        ScreeningResult result = screening.evaluate(ScreeningInput.of(Region.LEG, answers));
        assertThat(result.level()).isEqualTo(Level.CAUTION);
        assertThat(result.noGlides()).isTrue();
    }

    @Test
    void fixedRulesCannotBeSwitchedOff() {
        assertThatThrownBy(() -> rules.without(Set.of("saddleNumbness", "hypermobility")))
                .hasMessageContaining("saddleNumbness")
                .hasMessageNotContaining("hypermobility");
        assertThat(rules.without(Set.of("hypermobility")).find("hypermobility")).isEmpty();
    }

    @Test
    void unknownQuestionsAreRefused() {
        assertThatThrownBy(() -> screening.evaluate(
                        ScreeningInput.of(Region.LEG, Map.of("sadleNumbness", Answer.NO, "keyMuscleWeak", Answer.NO))))
                .hasMessageContaining("keyMuscleWeak, sadleNumbness");
    }

    @Test
    void readsFreeNotesAndReportsTheOnesNotUnderstood() {
        RedFlagNotes.Reading reading =
                RedFlagNotes.read(List.of("new sense of incomplete bladder emptying", "odd feeling in teeth"));
        assertThat(reading.answers()).containsEntry("bladderBowelChange", Answer.YES);
        assertThat(reading.notUnderstood()).containsExactly("odd feeling in teeth");
    }

    private ScreeningResult evaluate(List<Finding> findings, List<Clearance> clearances) {
        return screening.evaluate(new ScreeningInput(
                Region.LEG, allNo(Region.LEG), clearances, findings, OptionalInt.of(40), Optional.empty()));
    }

    private Map<String, Answer> allNo(Region region) {
        var answers = new HashMap<String, Answer>();
        rules.listQuestions(region).forEach(rule -> answers.put(rule.id(), Answer.NO));
        return answers;
    }

    private static Finding strength(String target, Result result) {
        return Finding.of(FindingKind.STRENGTH, target, Side.RIGHT, result);
    }
}
