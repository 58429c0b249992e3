package slipway.exercises.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import slipway.exercises.exercise.BodyJoint;
import slipway.exercises.exercise.Exercise;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;

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
    void refusesAnglesThatTheExerciseDoesNotAllow() {
        Exercise exercise = Catalogue.bundled().get("glide-knee-lying");
        assertThatThrownBy(() -> exercise.motion(Map.of(KNEE, 5.0)))
                .hasMessageContaining("knee must be within 75.0 and 10.0 deg in this exercise, was 5.0 deg");
        assertThatThrownBy(() -> exercise.motion(Map.of(new BodyJoint(Joint.HIP, Limb.OWN), 5.0)))
                .hasMessageContaining("not open in this exercise: [hip] (open: [knee])");
        assertThatThrownBy(() -> Catalogue.bundled().get("glide-knee-lyin"))
                .hasMessageContaining("nearest: glide-knee-lying");
    }
}
