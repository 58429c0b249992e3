package slipway.documents.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.exercises.readability.ReadingLevel;

/** The guide's own sentences; those of the sheet and of the exercises are scored where they are written. */
class GuideWordsTest {
    private static final List<String> SENTENCES = List.of(
            "no-script",
            "home.intro",
            "options.heading",
            "about.diagnosis",
            "about.newer",
            "cue.back",
            "done.long",
            "done.more",
            "done.paper",
            "live.rest",
            "live.well");

    @ParameterizedTest
    @EnumSource(Language.class)
    void areEasyToRead(Language language) {
        Words words = Words.beside(GuidePage.class, language);
        ReadingLevel level =
                ReadingLevel.of(language, SENTENCES.stream().map(words::get).toList());
        assertThat(level.easyEnough()).as(level.toString()).isTrue();
    }

    @Test
    void haveTheSameKeysAndPlacesInBothLanguages() {
        Words en = Words.beside(GuidePage.class, Language.EN);
        Words es = Words.beside(GuidePage.class, Language.ES);
        assertThat(es.keys()).isEqualTo(en.keys());
        for (String key : en.keys()) {
            for (String place : List.of("{0}", "{1}")) {
                // "Hizo las {0}" and the like: a place may be used again, never be missing.
                assertThat(es.open(key).contains(place))
                        .as(key + " " + place)
                        .isEqualTo(en.open(key).contains(place));
            }
        }
        assertThat(en.reviewed()).isTrue();
        assertThat(es.reviewed()).isFalse();
    }
}
