package slipway.exercises.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class YamlTextTest {
    private static final String LETTERS = "a0 \t\n-:#[]{},&*!|>'\"%@`?~.eE+yYnN\\é\u0085\u2028\uFEFFλ";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0134", "555 0134", "1e5", "yes", "no", "true", "null", "~", "", " ", "- a", "a: b", "# a", "&a", "*a",
                "!a", "%a", "@a", "4+", "4-", "-4", ".5", "0x10", "012", "1_000", "2026-03-02", "a\nb", "a\\x", "'",
                        "\"",
                "|", ">", "🙂", "שלום", "a\u0000b", "=", "<<", "?"
            })
    void textComesBackAsText(String text) {
        ObjectNode tree = JsonMapper.shared().createObjectNode();
        tree.put("key", text).putObject("object").put(text.isEmpty() ? "k" : text, 1.5);
        tree.putArray("list").add(text).add(3).add(true);
        assertThat(again(tree).toString()).isEqualTo(tree.toString());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void anyTextComesBack(long seed) {
        var random = new Random(seed);
        ObjectNode tree = JsonMapper.shared().createObjectNode();
        for (int i = 0; i < 200; i++) {
            var text = new StringBuilder();
            for (int j = random.nextInt(12); j > 0; j--) {
                text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
            }
            tree.put("k" + i, text.toString());
        }
        assertThat(again(tree).toString()).isEqualTo(tree.toString());
    }

    @Test
    void numbersComeBack() {
        JsonNode tree = JsonMapper.shared().readTree("{\"a\": 0.7, \"b\": -5, \"c\": 1000000, \"d\": 0.0001}");
        assertThat(again(tree).toString()).isEqualTo(tree.toString());
    }

    private static JsonNode again(JsonNode tree) {
        return YamlDocument.read("again", YamlText.of(tree).getBytes(StandardCharsets.UTF_8))
                .root();
    }
}
