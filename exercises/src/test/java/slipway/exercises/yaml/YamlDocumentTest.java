package slipway.exercises.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

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
        assertThatThrownBy(() -> read("")).hasMessageContaining("keys and values");
        assertThatThrownBy(() -> read("[".repeat(5_000))).isInstanceOf(MistakesException.class);
        assertThatThrownBy(() -> YamlDocument.read("f", new byte[] {'a', ':', (byte) 0xff}))
                .hasMessageContaining("UTF-8");
        assertThatThrownBy(() -> YamlDocument.read("f", new byte[10_000_000]))
                .hasMessageContaining("at most 200000 bytes, had 10000000");
    }

    @Test
    void namesTheNearestWord() {
        assertThat(NearestWord.find("stesp", List.of("steps", "step", "stop"))).contains("step");
        assertThat(NearestWord.complaint("key", "qqq", List.of("a", "b")))
                .isEqualTo("unknown key \"qqq\" (known: a, b)");
    }

    private static YamlDocument read(String text) {
        return YamlDocument.read("f.yaml", text.getBytes(StandardCharsets.UTF_8));
    }
}
