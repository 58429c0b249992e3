package slipway.reasoning;

import java.util.List;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Support;
import slipway.reasoning.dose.ExerciseCandidate;
import slipway.reasoning.dose.Purpose;
import slipway.reasoning.tolerance.Movement;

/** Exercises to choose from in tests: the usual three, lying, and some others. */
public final class Glides {
    private static final Posture LYING = Position.get("lying").posture();

    private Glides() {}

    public static ExerciseCandidate ankle() {
        return lying("ankle glide", LYING, move(Joint.ANKLE, -20, 15));
    }

    public static ExerciseCandidate knee() {
        return lying("knee glide", LYING.withParsed("hip 60 other-hip 45 other-knee 80"), move(Joint.KNEE, 90, 0));
    }

    public static ExerciseCandidate hip() {
        return lying("hip glide", LYING, move(Joint.HIP, 0, 80));
    }

    public static ExerciseCandidate otherHip() {
        return lying("other leg glide", LYING, new Movement(Joint.HIP, Limb.OTHER, 0, 60));
    }

    public static ExerciseCandidate neck() {
        return lying("neck glide", LYING, move(Joint.NECK, 0, 40));
    }

    public static ExerciseCandidate sittingKnee() {
        return new ExerciseCandidate(
                "sitting knee glide",
                "sitting",
                Support.SITTING,
                Position.get("sitting").posture(),
                List.of(move(Joint.KNEE, 90, 0), move(Joint.ANKLE, 0, -20)),
                Purpose.SLIDE);
    }

    public static List<ExerciseCandidate> three() {
        return List.of(hip(), knee(), ankle());
    }

    public static Movement move(Joint joint, double fromDeg, double toDeg) {
        return new Movement(joint, Limb.OWN, fromDeg, toDeg);
    }

    private static ExerciseCandidate lying(String id, Posture base, Movement move) {
        return new ExerciseCandidate(id, "lying", Support.LYING, base, List.of(move), Purpose.SLIDE);
    }
}
