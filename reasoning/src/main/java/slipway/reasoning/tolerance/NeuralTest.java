package slipway.reasoning.tolerance;

import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;

/**
 * One neural test, seen from the side that was moved.
 *
 * @param id unique within the examination, for example {@code straight leg raise right}
 * @param side the limb that was tested
 * @param start the posture in which the movement began, all joints
 * @param movement the joint that was moved; its last angle is where the response came, or where the test ended
 */
public record NeuralTest(
        String id, Side side, Posture start, Movement movement, SymptomResponse response, RemoteChange remote) {
    public NeuralTest {
        if (id.isBlank()) {
            throw new IllegalArgumentException("a neural test needs a name");
        }
    }

    /** The angle at which the response came or the test ended, in degrees. */
    public double reachedDeg() {
        return movement.toDeg();
    }

    /** The posture at which the response came or the test ended. */
    public Posture reached() {
        return movement.at(start, movement.toDeg());
    }

    /** The family that it belongs to. */
    public TestFamily family() {
        return TestFamily.of(reached());
    }
}
