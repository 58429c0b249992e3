package slipway.documents.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.exercises.readability.ReadingLevel;

/** The sentences that the person reads. */
class RelapsePlanReadabilityTest {
    @ParameterizedTest
    @EnumSource(Language.class)
    void isEasyToRead(Language language) {
        Words words = Words.beside(PaperWriter.class, language);
        ReadingLevel level = ReadingLevel.of(
                language,
                List.of(
                        words.get("comesBack.common"),
                        words.get("comesBack.rest"),
                        words.get("again.more"),
                        words.get("call.phone", "555 0134"),
                        words.get("again.lessFar")));
        assertThat(level.easyEnough()).as(level.toString()).isTrue();
    }
}
