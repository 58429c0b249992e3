package slipway.web.patient;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.Properties;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.exercises.exercise.Language;
import slipway.exercises.readability.ReadingLevel;

class PatientWordsTest {
    @ParameterizedTest
    @EnumSource(Language.class)
    void everyTextIsEasyToRead(Language language) throws java.io.IOException {
        var texts = new Properties();
        try (var stream = Objects.requireNonNull(
                PatientViews.class.getResourceAsStream("messages_" + language.code() + ".properties"))) {
            texts.load(new java.io.InputStreamReader(stream, java.nio.charset.StandardCharsets.UTF_8));
        }
        List<String> sentences = texts.entrySet().stream()
                .filter(each -> !each.getKey().equals("reviewed"))
                .map(each -> String.valueOf(each.getValue()).replace("{0}", "555"))
                .filter(text -> text.contains(" ") && text.matches(".*[.?].*"))
                .sorted()
                .toList();
        assertThat(sentences).hasSizeGreaterThan(15);
        assertThat(ReadingLevel.of(language, sentences)).matches(ReadingLevel::easyEnough);
    }
}
