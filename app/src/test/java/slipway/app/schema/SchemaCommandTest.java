package slipway.app.schema;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.app.Run;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SchemaCommandTest {
    @ParameterizedTest
    @ValueSource(strings = {"case", "episode", "plan", "exercise"})
    void printsASchema(String name) {
        Run run = Run.of("schema", name);
        assertThat(run.status()).isZero();
        JsonNode schema = JsonMapper.shared().readTree(run.out());
        assertThat(schema.path("$schema").stringValue()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
        assertThat(schema.path("type").stringValue()).isEqualTo("object");
    }

    @Test
    void listsWhatThereIs() {
        assertThat(Run.of("schema").out().lines().map(line -> line.substring(0, line.indexOf(' '))))
                .containsExactly("case", "episode", "plan", "exercise");
    }

    @Test
    void refusesAnUnknownName() {
        Run run = Run.of("schema", "sheet");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("there is no schema \"sheet\" (known: case, episode, plan, exercise)");
    }
}
