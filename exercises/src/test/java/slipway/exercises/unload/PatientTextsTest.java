package slipway.exercises.unload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import slipway.exercises.exercise.Language;
import slipway.exercises.exercise.Phrase;
import slipway.exercises.readability.ReadingLevel;

class PatientTextsTest {
    @Test
    void everyAdviceIsEasyToRead() {
        for (Advice advice : Advice.list()) {
            for (Language language : Language.values()) {
                assertThat(level(
                                advice.patientTexts()
                                        .subList(1, advice.patientTexts().size()),
                                language))
                        .as("%s %s", advice.id(), language)
                        .matches(ReadingLevel::easyEnough);
            }
        }
    }

    @Test
    void theRulesAreEasyToReadAndSayWhenToStop() {
        PatientRules rules = PatientRules.bundled();
        for (Language language : Language.values()) {
            assertThat(level(rules.patientTexts(), language)).matches(ReadingLevel::easyEnough);
        }
        assertThat(rules.stop().en()).isEqualTo("Stop if your usual pain gets clearly stronger or a new pain starts.");
    }

    @Test
    void nothingFrightens() {
        for (Advice advice : Advice.list()) {
            assertThat(advice.patientTexts().toString().toLowerCase(Locale.ROOT))
                    .doesNotContain("pinch", "damage", "pinzad", "dañad");
        }
    }

    @Test
    void theHabitsOfTheHistoryFindTheirAdvice() {
        assertThat(Advice.listTriggers())
                .contains(
                        "crossed legs",
                        "wallet",
                        "kneeling",
                        "footwear",
                        "sleep",
                        "driving",
                        "belt",
                        "saddle",
                        "foot drop");
        assertThat(Advice.get("uncross-legs").triggers()).containsExactly("crossed legs");
        assertThatThrownBy(() -> Advice.get("uncros-legs")).hasMessageContaining("nearest: uncross-legs");
    }

    private static ReadingLevel level(List<Phrase> texts, Language language) {
        return ReadingLevel.of(
                language, texts.stream().map(text -> text.in(language)).toList());
    }
}
