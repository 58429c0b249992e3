package slipway.exercises.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.MistakesException;

class ExerciseReaderTest {
    private static String good = "";

    @BeforeAll
    static void readGoodFile() throws IOException {
        try (var stream = ExerciseReaderTest.class.getResourceAsStream("knee-glide.yaml")) {
            good = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void tellsAllMistakesAtOnceWithTheirPlaces() {
        String bad = good.replace(
                        "name: {en: \"Knee glide with a strap, lying\", es:", "name: {en: \"Knee glide\", se:")
                .replace("purpose: glide", "purpose: glid")
                .replace("angles: hip 70 ankle -10", "angles: hip 170 ankel -10")
                .replace("easiest: 75", "easiest: 77")
                .replace("harder: [", "harder: [glide-nee-lying, ");
        assertThat(mistakes(bad))
                .anyMatch(line -> line.matches("line 2, column \\d+: name.se: unknown key \"se\" \\(nearest: es\\)"))
                .noneMatch(line -> line.contains("has no range"))
                .contains("line 2, column 1: name: the key \"es\" is missing")
                .contains("line 4, column 1: purpose: unknown word \"glid\" (nearest: glide)")
                .anyMatch(line -> line.contains("position.angles")
                        && line.contains("hip must be within -40 and 140 deg, was 170")
                        && line.contains("unknown joint \"ankel\""))
                .anyMatch(line -> line.contains("steps of 5 deg, was 77.0 deg"))
                .anyMatch(line ->
                        line.contains("harder[0]: unknown exercise \"glide-nee-lying\" (nearest: glide-knee-lying)"));
    }

    @Test
    void catchesWordsThatContradictTheMovement() {
        assertThat(mistakes(good.replace("Bend it again.", "Keep your knee straight.")))
                .singleElement()
                .asString()
                .contains("steps[3].en")
                .contains("\"knee straight\" contradict the movement: the knee is at 90.0 deg");
        assertThat(mistakes(good.replace("Straighten your knee", "Pull your toes up")))
                .singleElement()
                .asString()
                .contains("the ankle is at -10.0 deg");
        assertThat(mistakes(good.replace("Vuelva a doblarla.", "Siéntese en la silla.")))
                .hasSize(2)
                .anyMatch(line -> line.contains("the support is lying"))
                .anyMatch(line -> line.contains("no chair among the props"));
    }

    @Test
    void holdsTheMovementToTheRulesOfItsPurposeAndSide() {
        assertThat(mistakes(good.replace("seconds: 3}", "seconds: 3, hold: 20}")))
                .hasSize(2)
                .allMatch(line -> line.contains("holds no end position longer than 1 s, was 20.0 s"));
        assertThat(mistakes(good.replace("side: affected", "side: other")))
                .singleElement()
                .asString()
                .contains("was \"other\" while these move: [knee]");
        assertThat(mistakes(good.replace("base: lying knees bent", "base: sitting")))
                .anyMatch(line -> line.contains("lying starts from lying or lying knees bent, was \"sitting\""));
        assertThat(mistakes(good.replace("base: lying knees bent", "base: lying knes bent")))
                .singleElement()
                .asString()
                .contains("nearest: lying knees bent");
    }

    /** Found by mutation: the schema library threw its own exception on a whole number beyond 64 bits. */
    @Test
    void refusesNumbersThatNobodyMeans() {
        for (String number : List.of("1e22", "99999999999999999999999", "-1e300", ".inf", ".nan")) {
            assertThat(mistakes(good.replace("repetitions: 10", "repetitions: " + number)))
                    .as(number)
                    .singleElement()
                    .asString()
                    .contains("dose.repetitions");
        }
    }

    @Test
    void takesAFileOfATherapistWithoutKnowingItsNeighbours() {
        String own = good.replace("harder: [", "harder: [something-of-mine, ");
        assertThat(ExerciseReader.read("own.yaml", own.getBytes(StandardCharsets.UTF_8))
                        .neighbours()
                        .harder())
                .contains("something-of-mine");
        assertThatThrownBy(() -> ExerciseReader.read("own.yaml", new byte[0])).isInstanceOf(MistakesException.class);
    }

    private static List<String> mistakes(String text) {
        try {
            ExerciseReader.read(
                    "f.yaml",
                    text.getBytes(StandardCharsets.UTF_8),
                    Set.of("glide-knee-lying", "glide-hip-lying", "glide-ankle-lying"));
            return List.of();
        } catch (MistakesException e) {
            return e.mistakes().stream().map(Mistake::toString).toList();
        }
    }
}
