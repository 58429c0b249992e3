package slipway.web.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.exercises.readability.ReadingLevel;
import slipway.web.told.Question;
import slipway.web.told.Questions;

class IntakeWordsTest {
    @Test
    void everyQuestionHasItsWordsAndEverySignOfTheLegIsAsked() {
        for (Language language : Language.values()) {
            Words words = Questions.words(language);
            for (Question question : Questions.all()) {
                assertThat(question.asked(words)).isNotBlank();
                question.values()
                        .forEach(
                                value -> assertThat(question.said(value, words)).isNotBlank());
            }
        }
        List<String> asked = Questions.all().stream().map(Question::id).toList();
        assertThat(slipway.reasoning.screening.ScreeningRules.load()
                        .listRequired(slipway.reasoning.screening.Region.LEG))
                .allMatch(rule -> asked.contains(rule.id()));
        assertThat(Questions.words(Language.ES).reviewed()).isFalse();
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyTextIsEasyToRead(Language language) {
        var texts = new java.util.ArrayList<String>();
        for (Words words : List.of(Questions.words(language), IntakeView.words(language))) {
            words.keys().stream()
                    .filter(key -> !key.equals("reviewed") && !(key.startsWith("slip.") && isForStaff(key)))
                    .map(words::open)
                    .map(text -> text.replace("{0}", "911").replace("{1}", "12"))
                    .filter(text -> text.contains(" ") && text.matches(".*[.?].*"))
                    .forEach(texts::add);
        }
        assertThat(texts).hasSizeGreaterThan(70);
        assertThat(ReadingLevel.of(language, texts)).matches(ReadingLevel::easyEnough);
    }

    /** The slip has words for whoever hands it out, in English only. */
    private static boolean isForStaff(String key) {
        return !IntakeView.words(Language.ES).keys().contains(key);
    }
}
