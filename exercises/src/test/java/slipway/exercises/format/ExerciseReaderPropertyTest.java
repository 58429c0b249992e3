package slipway.exercises.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.yaml.MistakesException;

/** Broken files never do anything but tell their mistakes. */
class ExerciseReaderPropertyTest {
    private static final int FILES_PER_SEED = 400;
    private static final String[] SCRAPS = {
        "{",
        "}",
        "[",
        "]",
        ": ",
        "- ",
        "\n",
        "&a ",
        "*a",
        "!!binary ",
        "? ",
        "|",
        ">",
        "\t",
        "\"",
        "'",
        "#",
        "~",
        "null",
        "NaN",
        ".inf",
        "1e999",
        "0x7f",
        "-",
        "open",
        "knee open",
        "hip 9999",
        "\u0000",
        "\uFEFF",
        "é",
        "\uD83D",
        "---\n",
        "...\n",
        "%YAML 9\n",
        "<<: ",
        "id: x\n",
        "poses: []\n",
        "errors:\n",
        "999999999999999999999"
    };

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void mutatedFilesAreReadOrRefused(long seed) throws IOException {
        var random = new Random(seed);
        var ids = Catalogue.bundled().list();
        int refused = 0;
        for (int i = 0; i < FILES_PER_SEED; i++) {
            String id = ids.get(random.nextInt(ids.size())).id();
            byte[] mutated = mutated(file(id), random);
            try {
                ExerciseReader.read("mutated.yaml", mutated);
            } catch (MistakesException e) {
                refused++;
                assertThat(e.mistakes())
                        .isNotEmpty()
                        .allSatisfy(mistake -> assertThat(mistake.message()).isNotBlank());
            }
        }
        // Most scraps break something; a mutation inside a word of a text is still a good file.
        assertThat(refused).isBetween(FILES_PER_SEED / 4, FILES_PER_SEED - 1);
    }

    private static byte[] mutated(byte[] file, Random random) {
        var text = new StringBuilder(new String(file, StandardCharsets.UTF_8));
        int times = 1 + random.nextInt(3);
        for (int i = 0; i < times; i++) {
            int at = random.nextInt(text.length());
            int to = Math.min(text.length(), at + random.nextInt(12));
            switch (random.nextInt(4)) {
                case 0 -> text.insert(at, SCRAPS[random.nextInt(SCRAPS.length)]);
                case 1 -> text.delete(at, to);
                case 2 -> text.replace(at, to, SCRAPS[random.nextInt(SCRAPS.length)]);
                default -> text.insert(random.nextInt(text.length()), text.substring(at, to));
            }
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(10) == 0) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    private static byte[] file(String id) throws IOException {
        try (var stream = Catalogue.class.getResourceAsStream("/slipway/exercises/catalogue/" + id + ".yaml")) {
            return stream.readAllBytes();
        }
    }
}
