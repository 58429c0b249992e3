package slipway.documents.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.exercises.readability.ReadingLevel;

/** The sentences of the sheet itself; the texts of the exercises are scored where they are written. */
class SheetReadabilityTest {
    @ParameterizedTest
    @EnumSource(Language.class)
    void theSheetIsEasyToRead(Language language) {
        ReadingLevel level = ReadingLevel.of(language, sentences(Words.beside(HomeSheet.class, language)));
        assertThat(level.easyEnough()).as(level.toString()).isTrue();
    }

    private static List<String> sentences(Words words) {
        var sentences = new ArrayList<String>();
        for (String sign : words.list("emergency.sign")) {
            sentences.add(words.get("emergency.intro", 911).replace(":", " ") + sign + ".");
        }
        for (String sign : words.list("call.sign")) {
            sentences.add(words.get("call.intro", 555).replace(":", " ") + sign + ".");
        }
        sentences.add(words.get("call.closed"));
        sentences.addAll(words.list("rules.line", 2, 10));
        sentences.addAll(words.list("cautions.line"));
        sentences.add(words.get("head.newer"));
        sentences.add(words.get("diary.intro"));
        sentences.add(words.get("diary.note"));
        return sentences;
    }
}
