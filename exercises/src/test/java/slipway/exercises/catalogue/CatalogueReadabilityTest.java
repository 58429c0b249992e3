package slipway.exercises.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.exercises.exercise.Phrase;
import slipway.exercises.readability.ReadingLevel;

class CatalogueReadabilityTest {
    /** Words that frighten or claim more than anybody knows. */
    private static final List<String> NEVER = List.of("pinch", "damage", "pellizc", "pinzad", "dañad", "safe for");

    @Test
    void everyExerciseIsEasyToReadInBothLanguages() {
        var hard = new ArrayList<String>();
        for (Exercise exercise : Catalogue.bundled().list()) {
            for (Language language : Language.values()) {
                ReadingLevel level = ReadingLevel.of(language, sentences(exercise, language));
                if (!level.easyEnough()) {
                    hard.add(exercise.id() + " " + language.code() + ": " + level);
                }
            }
        }
        assertThat(hard).isEmpty();
    }

    @Test
    void noTextFrightensOrPromises() {
        var found = new ArrayList<String>();
        for (Exercise exercise : Catalogue.bundled().list()) {
            for (Phrase text : exercise.patientTexts()) {
                for (String word : NEVER) {
                    if ((text.en() + " " + text.es()).toLowerCase(Locale.ROOT).contains(word)) {
                        found.add(exercise.id() + ": " + text.en());
                    }
                }
            }
        }
        assertThat(found).isEmpty();
    }

    /** The name is a heading, not a sentence. */
    private static List<String> sentences(Exercise exercise, Language language) {
        return exercise.patientTexts().stream()
                .skip(1)
                .map(text -> text.in(language))
                .toList();
    }
}
