package slipway.care.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.exercises.exercise.BodyJoint;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.KeyPose;
import slipway.exercises.exercise.OpenAngle;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.reasoning.dose.ExerciseCandidate;
import slipway.reasoning.dose.Purpose;
import slipway.reasoning.tolerance.Movement;

/** Exercises of the catalogue as the range design sees them. */
final class Candidates {
    private Candidates() {}

    /** The exercise as a candidate; empty for one that does not move a nerve by a range that can be chosen. */
    static Optional<ExerciseCandidate> of(Exercise exercise) {
        boolean glide = exercise.purpose() == slipway.exercises.exercise.Purpose.GLIDE;
        List<KeyPose> poses = exercise.movement().poses();
        if (!glide || poses.size() < 2 || exercise.movement().openAngles().isEmpty()) {
            return Optional.empty();
        }
        Posture start = poses.get(0).posture(Map.of());
        KeyPose far = poses.get(1);
        List<Movement> moves = moves(poses.get(0), far);
        if (moves.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new ExerciseCandidate(
                exercise.id(),
                exercise.setting().base().name(),
                exercise.setting().support(),
                start,
                moves,
                purpose(moves),
                ease(poses.get(0), far)));
    }

    /** Open joints lead; a joint that changes without being open goes along in proportion. */
    private static List<Movement> moves(KeyPose first, KeyPose far) {
        Posture start = first.posture(Map.of());
        var leading = new ArrayList<Movement>();
        var following = new ArrayList<Movement>();
        Posture shown = far.posture(Map.of());
        for (Limb limb : Limb.values()) {
            for (Joint joint : Joint.values()) {
                if (limb == Limb.OTHER && !joint.paired()) {
                    continue;
                }
                double from = start.angleDeg(joint, limb);
                var bodyJoint = new BodyJoint(joint, limb);
                // Open in both poses: held at an angle that may be chosen, not moved.
                OpenAngle open =
                        first.open().containsKey(bodyJoint) ? null : far.open().get(bodyJoint);
                double to = open != null ? open.farthestDeg() : shown.angleDeg(joint, limb);
                if (from != to) {
                    (open != null ? leading : following).add(new Movement(joint, limb, from, to));
                }
            }
        }
        leading.addAll(following);
        return leading;
    }

    /** A held joint that may be eased: from the angle in pictures to the easiest that the exercise allows. */
    private static Optional<Movement> ease(KeyPose start, KeyPose far) {
        return start.open().values().stream()
                .filter(open -> far.open().containsKey(open.joint()))
                .filter(open -> open.shownDeg() != open.easiestDeg())
                .map(open ->
                        new Movement(open.joint().joint(), open.joint().limb(), open.shownDeg(), open.easiestDeg()))
                .findFirst();
    }

    /** From both ends if two joints of different ends load at once; a slide otherwise. */
    private static Purpose purpose(List<Movement> moves) {
        boolean proximal = moves.stream().anyMatch(m -> loads(m) && isProximal(m));
        boolean distal = moves.stream().anyMatch(m -> loads(m) && !isProximal(m));
        return proximal && distal ? Purpose.TENSION : Purpose.SLIDE;
    }

    private static boolean isProximal(Movement move) {
        return move.joint() == Joint.NECK || move.joint() == Joint.SPINE || move.joint() == Joint.HIP;
    }

    /** Whether the movement lengthens the bed of the back-of-leg nerve: all flexions do, but the knee's does not. */
    private static boolean loads(Movement move) {
        int direction = move.joint() == Joint.KNEE ? -move.direction() : move.direction();
        boolean onPath = switch (move.joint()) {
            case HIP, KNEE, ANKLE -> move.limb() == Limb.OWN;
            case SPINE, NECK -> true;
            default -> false;
        };
        return onPath && direction > 0;
    }
}
