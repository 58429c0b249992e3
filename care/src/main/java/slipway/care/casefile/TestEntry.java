package slipway.care.casefile;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;

/**
 * One neural test as it was done.
 *
 * @param test what was done
 * @param side the leg that was moved
 * @param start the posture in which the movement began, seen from that leg, all joints
 * @param reachedDeg angle of the moving joint where the symptom first changed from resting, or where the test ended
 * @param changed whether the symptom changed there; otherwise the angle was reached without
 * @param restingSymptom intensity before the movement, 0 to 10
 */
public record TestEntry(
        TestKind test,
        Side side,
        Posture start,
        double reachedDeg,
        boolean changed,
        OptionalDouble restingSymptom,
        Optional<Felt> felt,
        List<RemoteMovement> remoteMovements) {
    public TestEntry {
        remoteMovements = List.copyOf(remoteMovements);
    }

    /**
     * What was felt.
     *
     * @param kind {@code pain}, {@code tingling}, {@code numbness} or {@code stretch}
     * @param familiar whether it is the symptom that the person came with
     */
    public record Felt(String kind, boolean familiar) {}

    /** The posture where the symptom changed or the test ended. */
    public Posture reached() {
        return start.with(test.joint(), reachedDeg);
    }

    /** A name for messages on the file, for example {@code straight-leg-raise left}. */
    public String text() {
        return test.name() + " " + side.name().toLowerCase(java.util.Locale.ROOT);
    }

    /** A name for sentences, for example {@code straight leg raise left}. */
    public String words() {
        return text().replace('-', ' ');
    }
}
