package slipway.exercises.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

class YamlDocumentTest {
    @Test
    void knowsTheLineAndColumnOfEachValue() {
        YamlDocument document = read("id: a\nsteps:\n  - en: one\n    es: uno\n  - en: two\n");
        assertThat(document.mistake("/steps/1/en", "too short"))
                .hasToString("line 5, column 5: steps[1].en: too short");
        assertThat(document.mistake("/steps/1", "no es")).hasToString("line 5, column 5: steps[1]: no es");
        assertThat(document.mistake("/steps/1/es", "missing").line()).isEqualTo(5);
        assertThat(document.mistake("/name", "missing").line()).isEqualTo(1);
    }

    @Test
    void refusesWhatNobodyWritesByHand() {
        assertThatThrownBy(() -> read("a: &x [1]\nb: *x\n"))
                .hasMessageContaining("aliases")
                .hasMessageContaining("line 1");
        assertThatThrownBy(() -> read("a: 1\n---\nb: 2\n")).hasMessageContaining("one document");
        assertThatThrownBy(() -> read("a: 1\na: 2\n"))
                .hasMessageContaining("line 2")
                .hasMessageContaining("uplicate");
        assertThatThrownBy(() -> read("- a\n- b\n")).hasMessageContaining("keys and values");
        assertThatThrownBy(() -> read("")).hasMessageContaining("empty");
        assertThatThrownBy(() -> read("[".repeat(5_000))).isInstanceOf(MistakesException.class);
        assertThatThrownBy(() -> YamlDocument.read("f", new byte[] {'a', ':', (byte) 0xff}))
                .hasMessageContaining("UTF-8");
        assertThatThrownBy(() -> YamlDocument.read("f", new byte[10_000_000]))
                .hasMessageContaining("at most 200000 bytes, had 10000000");
    }

    @Test
    void tellsAllMistakesOfReadingAndOfTheSchemaTogether() {
        var schema = YamlSchema.of(JsonMapper.shared().readTree("""
                {"type": "object", "additionalProperties": false, "required": ["id"], "properties": {
                  "id": {"type": "string"}, "deg": {"type": "number", "minimum": 0, "maximum": 90},
                  "kind": {"enum": ["low", "high"]}, "list": {"uniqueItems": true},
                  "code": {"description": "two small letters", "pattern": "^[a-z]{2}$"}}}"""));
        var document = YamlDocument.readAsFarAsPossible("f.yaml", """
                deg: 200
                deg: 10
                kind: hihg
                lsit: []
                list: [1, 1]
                code: "7"
                """.getBytes(StandardCharsets.UTF_8));
        assertThat(schema.check(document))
                .extracting(Mistake::toString)
                .containsExactlyInAnyOrder(
                        "line 2, column 1: deg: duplicate key, first given on line 1",
                        "line 1, column 1: deg: must be at most 90, was 200",
                        "line 3, column 1: kind: unknown word \"hihg\" (nearest: high)",
                        "line 4, column 1: lsit: unknown key \"lsit\" (nearest: list)",
                        "line 5, column 1: list: must not hold the same entry twice, was [1,1]",
                        "line 6, column 1: code: must be: two small letters, was \"7\"",
                        "line 1, column 1: the key \"id\" is missing");
    }

    @Test
    void takesOnlyFiniteNumbersAsNumbers() {
        YamlDocument document = read("a: .nan\nb: .inf\nc: 1e999\nd: 4.5\ne: 60\nf: no\ng: '7'\nh: 90 deg\n");
        assertThat(document.root().properties().stream()
                        .filter(entry -> entry.getValue().isNumber())
                        .map(Map.Entry::getKey))
                .containsExactly("d", "e");
    }

    @Test
    void answersBrokenInputWithItsPlace() {
        assertThatThrownBy(() -> read("a: 1\n\tb: 2\n"))
                .hasMessageContaining("line 2")
                .hasMessageContaining("TAB");
        assertThatThrownBy(() -> read("a: [1, 2\nb: 3\n")).hasMessageContaining("not YAML");
        assertThatThrownBy(() -> read("a: \u0000\n")).hasMessageContaining("not YAML");
        assertThatThrownBy(() -> read("a: !!set {b}\n")).hasMessageContaining("tags (!)");
        assertThatThrownBy(() -> read("? [a]\n: 1\n")).hasMessageContaining("a key must be a word");
        assertThatThrownBy(() -> YamlDocument.read("f", new byte[] {'a', ':', '\n', 'b', (byte) 0xff}))
                .hasMessageContaining("line 2, column 2")
                .hasMessageContaining("0xff");
    }

    @Test
    void namesTheNearestWord() {
        assertThat(NearestWord.find("stesp", List.of("steps", "step", "stop"))).contains("step");
        assertThat(NearestWord.complaint("key", "qqq", List.of("a", "b")))
                .isEqualTo("unknown key \"qqq\" (known: a, b)");
    }

    /** Found by mutation: the YAML library threw a plain NumberFormatException. */
    @Test
    void refusesAnEscapeWithoutItsDigits() {
        assertThatThrownBy(() -> YamlDocument.read("f", "a: \"\\x\"\n".getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(MistakesException.class)
                .hasMessageContaining("not YAML");
    }

    private static YamlDocument read(String text) {
        return YamlDocument.read("f.yaml", text.getBytes(StandardCharsets.UTF_8));
    }
}
