package slipway.care.casefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.exercises.yaml.MistakesException;

class CaseFilesPropertyTest {
    private static final byte[] GOOD = CaseText.complete().getBytes(StandardCharsets.UTF_8);
    private static final byte[] NASTY = "\0\t{}[]&*!:-?#|>%@`\"'\\\n9.eé".getBytes(StandardCharsets.UTF_8);

    /** Whatever one does to a good file, it is read or it is refused with a place; nothing else comes out. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void damagedFilesAreReadOrRefused(long seed) {
        var random = new Random(seed);
        int refused = 0;
        for (int i = 0; i < 60; i++) {
            byte[] bytes = GOOD.clone();
            for (int changes = 1 + random.nextInt(4); changes > 0; changes--) {
                bytes[random.nextInt(bytes.length)] = NASTY[random.nextInt(NASTY.length)];
            }
            try {
                CaseFiles.read(bytes, "damaged.yaml");
            } catch (MistakesException e) {
                refused++;
                assertThat(e.mistakes()).isNotEmpty();
            }
        }
        assertThat(refused).isPositive();
    }

    /** Each value in turn becomes something of another type. */
    @ParameterizedTest
    @ValueSource(strings = {"null", "[]", "{}", "-1", "x", "{a: {b: [c]}}", "[[1], 2]"})
    void valuesOfTheWrongTypeAreReadOrRefused(String replacement) {
        String[] lines = CaseText.complete().split("\n");
        for (int i = 0; i < lines.length; i++) {
            String[] changed = lines.clone();
            changed[i] = lines[i].replaceFirst(":.*", ": " + replacement);
            try {
                CaseText.read(String.join("\n", changed));
            } catch (MistakesException e) {
                assertThat(e.mistakes()).isNotEmpty();
            }
        }
    }

    @Test
    void hugeNestedAndExplodingFilesGetOneAnswer() {
        assertThatThrownBy(() -> CaseText.read("a: ".repeat(3_000_000))).hasMessageContaining("at most 200000 bytes");
        assertThatThrownBy(() -> CaseText.read("a:\n" + " [\n".repeat(50_000))).hasMessageContaining("nested at most");
        assertThatThrownBy(() -> CaseText.read("a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n"))
                .hasMessageContaining("aliases");
    }
}
