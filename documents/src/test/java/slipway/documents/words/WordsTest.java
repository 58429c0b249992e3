package slipway.documents.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.MissingResourceException;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.documents.letter.ReferralLetter;
import slipway.documents.sheet.HomeSheet;
import slipway.exercises.exercise.Language;

class WordsTest {
    private static final Pattern PLACE = Pattern.compile("\\{\\d}");

    @ParameterizedTest
    @ValueSource(classes = {HomeSheet.class, ReferralLetter.class})
    void bothLanguagesHaveTheSameKeysAndPlaces(Class<?> home) {
        Words english = Words.beside(home, Language.EN);
        Words spanish = Words.beside(home, Language.ES);
        assertThat(spanish.keys()).isEqualTo(english.keys());
        for (String key : english.keys()) {
            assertThat(places(spanish, key)).as(key).isEqualTo(places(english, key));
            assertThat(spanish.get(key, "", "", "")).as(key).isNotBlank();
        }
    }

    private static Set<String> places(Words words, String key) {
        return PLACE.matcher(words.get(key, "{0}", "{1}", "{2}"))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toSet());
    }

    @Test
    void aValueThatLooksLikeAPlaceStaysAsItIs() {
        Words words = Words.beside(HomeSheet.class, Language.EN);
        assertThat(words.get("title", "{0} O'Neil")).endsWith("{0} O'Neil");
    }

    @Test
    void aMissingTextIsNamed() {
        Words words = Words.beside(HomeSheet.class, Language.EN);
        assertThatThrownBy(() -> words.get("no.such.key"))
                .isInstanceOf(MissingResourceException.class)
                .hasMessageContaining("no.such.key");
    }

    @Test
    void spanishIsMarkedAsNotReviewed() {
        assertThat(Words.beside(HomeSheet.class, Language.ES).reviewed()).isFalse();
        assertThat(Words.beside(HomeSheet.class, Language.EN).reviewed()).isTrue();
    }
}
