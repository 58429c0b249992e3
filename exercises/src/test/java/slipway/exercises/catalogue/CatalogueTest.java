package slipway.exercises.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slipway.exercises.exercise.BodyJoint;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Indication;
import slipway.exercises.exercise.Purpose;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Support;

class CatalogueTest {
    private static final BodyJoint KNEE = new BodyJoint(Joint.KNEE, Limb.OWN);

    @Test
    void playsAnExerciseWithTheChosenAngle() {
        Exercise exercise = Catalogue.bundled().get("glide-knee-lying");
        var motion = exercise.motion(Map.of(KNEE, 45.0));
        assertThat(motion.seconds()).isEqualTo(6);
        assertThat(motion.at(3).angleDeg(Joint.KNEE)).isEqualTo(45);
        assertThat(motion.at(0)).isEqualTo(motion.at(6));
        assertThat(motion.at(0).angleDeg(Joint.HIP, Limb.OTHER)).isEqualTo(45);
        assertThat(exercise.movement().rangesDeg(Map.of())).containsOnlyKeys(KNEE);
    }

    @Test
    void coversWhatATherapistReachesFor() {
        var exercises = Catalogue.bundled().list();
        assertThat(exercises).hasSizeGreaterThanOrEqualTo(48);
        assertThat(exercises.stream().map(Exercise::purpose)).contains(Purpose.values());
        assertThat(exercises.stream().map(exercise -> exercise.setting().support()))
                .contains(Support.LYING, Support.SIDE_LYING, Support.PRONE, Support.SITTING, Support.STANDING);
        assertThat(exercises.stream().flatMap(exercise -> exercise.use().suits().stream()))
                .contains(Indication.values());
    }

    @Test
    void everyGlideLeavesItsRangeToThePlan() {
        assertThat(Catalogue.bundled().list().stream().filter(exercise -> exercise.purpose() == Purpose.GLIDE))
                .allSatisfy(exercise -> assertThat(exercise.movement().openAngles())
                        .as(exercise.id())
                        .isNotEmpty())
                .allSatisfy(exercise ->
                        assertThat(exercise.use().tractKeys()).as(exercise.id()).isNotEmpty());
    }

    @Test
    void theLadderIsTheSameFromBothSidesAndHasNoCircle() {
        var catalogue = Catalogue.bundled();
        for (Exercise exercise : catalogue.list()) {
            for (String harder : exercise.neighbours().harder()) {
                assertThat(catalogue.get(harder).neighbours().easier()).contains(exercise.id());
            }
            for (String easier : exercise.neighbours().easier()) {
                assertThat(catalogue.get(easier).neighbours().harder()).contains(exercise.id());
            }
            assertThat(above(catalogue, exercise)).doesNotContain(exercise.id());
        }
    }

    private static Set<String> above(Catalogue catalogue, Exercise exercise) {
        var seen = new HashSet<String>();
        var open = new ArrayDeque<>(exercise.neighbours().harder());
        while (!open.isEmpty()) {
            String id = open.remove();
            if (seen.add(id)) {
                open.addAll(catalogue.get(id).neighbours().harder());
            }
        }
        return seen;
    }

    @Test
    void refusesAnglesThatTheExerciseDoesNotAllow() {
        Exercise exercise = Catalogue.bundled().get("glide-knee-lying");
        assertThatThrownBy(() -> exercise.motion(Map.of(KNEE, 5.0)))
                .hasMessageContaining("knee must be within 75.0 and 10.0 deg in this exercise, was 5.0 deg");
        assertThatThrownBy(() -> exercise.motion(Map.of(new BodyJoint(Joint.ANKLE, Limb.OWN), 5.0)))
                .hasMessageContaining("not open in this exercise: [ankle] (open: [knee, hip])");
        assertThatThrownBy(() -> Catalogue.bundled().get("glide-knee-lyin"))
                .hasMessageContaining("nearest: glide-knee-lying");
    }
}
