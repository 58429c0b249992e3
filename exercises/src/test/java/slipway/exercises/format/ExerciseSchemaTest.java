package slipway.exercises.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import slipway.exercises.exercise.Exclusion;
import slipway.exercises.exercise.Indication;
import slipway.exercises.exercise.MovingSide;
import slipway.exercises.exercise.PropPlace;
import slipway.exercises.exercise.Purpose;
import slipway.exercises.exercise.Surface;
import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Prop;
import slipway.mechanics.body.Support;
import slipway.mechanics.nerve.Tract;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The schema, which editors use, names the same words as the types. */
class ExerciseSchemaTest {
    @Test
    void namesTheSameWordsAsTheTypes() throws IOException {
        JsonNode properties = schema().path("properties");
        assertThat(words(properties.at("/purpose"))).isEqualTo(keys(Purpose.values(), Purpose::key));
        assertThat(words(properties.at("/suits/items"))).isEqualTo(keys(Indication.values(), Indication::key));
        assertThat(words(properties.at("/not-for/items"))).isEqualTo(keys(Exclusion.values(), Exclusion::key));
        assertThat(words(properties.at("/tracts/items"))).containsAll(keys(Tract.values(), Tract::key));
        JsonNode position = properties.at("/position/properties");
        assertThat(words(position.at("/support"))).isEqualTo(keys(Support.values(), Support::key));
        assertThat(words(position.at("/side"))).isEqualTo(keys(MovingSide.values(), MovingSide::key));
        assertThat(words(position.at("/surfaces/items"))).isEqualTo(keys(Surface.values(), Surface::key));
        assertThat(words(position.at("/arms"))).isEqualTo(keys(Arms.values(), Arms::key));
        JsonNode props = position.at("/props/items/properties");
        assertThat(words(props.at("/prop"))).isEqualTo(keys(Prop.values(), Prop::key));
        assertThat(words(props.at("/at"))).isEqualTo(keys(PropPlace.values(), PropPlace::key));
    }

    private static JsonNode schema() throws IOException {
        try (var stream = ExerciseSchemaTest.class.getResourceAsStream("/slipway/exercises/exercise.schema.json")) {
            return JsonMapper.shared().readTree(stream);
        }
    }

    private static List<String> words(JsonNode node) {
        var words = new ArrayList<String>();
        node.path("enum").forEach(word -> words.add(word.asString()));
        return words;
    }

    private static <T> List<String> keys(T[] values, Function<T, String> key) {
        return Arrays.stream(values).map(key).toList();
    }
}
