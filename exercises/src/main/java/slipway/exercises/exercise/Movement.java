package slipway.exercises.exercise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.motion.Motion;

/**
 * How an exercise goes: key poses one after the other, then back to the first.
 *
 * @param poses at least one; a single pose is held
 * @param openAngles what the plan chooses; may be empty
 * @param side which limb moves
 */
public record Movement(List<KeyPose> poses, List<OpenAngle> openAngles, MovingSide side) {
    public Movement {
        poses = List.copyOf(poses);
        openAngles = List.copyOf(openAngles);
        if (poses.isEmpty()) {
            throw new IllegalArgumentException("an exercise needs at least one key pose, had none");
        }
    }

    /** The pose of this name. */
    public KeyPose pose(String id) {
        return poses.stream()
                .filter(pose -> pose.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("unknown pose \"%s\" (known: %s)"
                        .formatted(
                                id,
                                String.join(
                                        ", ", poses.stream().map(KeyPose::id).toList()))));
    }

    /** One repetition, ending in the first pose again. */
    public Motion motion(Map<BodyJoint, Double> chosenDeg) {
        refuseStrangers(chosenDeg);
        var keys = new ArrayList<Motion.Key>();
        double seconds = 0;
        for (KeyPose pose : poses) {
            seconds += keys.isEmpty() ? 0 : pose.reachSeconds();
            Posture posture = pose.posture(chosenDeg);
            keys.add(new Motion.Key(posture, seconds));
            if (pose.holdSeconds() > 0) {
                seconds += pose.holdSeconds();
                keys.add(new Motion.Key(posture, seconds));
            }
        }
        if (poses.size() > 1) {
            KeyPose first = poses.get(0);
            keys.add(new Motion.Key(first.posture(chosenDeg), seconds + first.reachSeconds()));
        }
        return new Motion(keys);
    }

    private void refuseStrangers(Map<BodyJoint, Double> chosenDeg) {
        var known = openAngles.stream().map(OpenAngle::joint).toList();
        var strangers = chosenDeg.keySet().stream()
                .filter(joint -> !known.contains(joint))
                .toList();
        if (!strangers.isEmpty()) {
            throw new IllegalArgumentException(
                    "these angles are not open in this exercise: %s (open: %s)".formatted(strangers, known));
        }
    }

    /** The joints that move and by how many degrees, the largest first; with the chosen angles. */
    public Map<BodyJoint, Double> rangesDeg(Map<BodyJoint, Double> chosenDeg) {
        var postures = poses.stream().map(pose -> pose.posture(chosenDeg)).toList();
        var ranges = new ArrayList<Map.Entry<BodyJoint, Double>>();
        for (Limb limb : Limb.values()) {
            for (Joint joint : Joint.values()) {
                if (limb == Limb.OTHER && !joint.paired()) {
                    continue;
                }
                var angles = postures.stream()
                        .mapToDouble(posture -> posture.angleDeg(joint, limb))
                        .summaryStatistics();
                if (angles.getMax() > angles.getMin()) {
                    ranges.add(Map.entry(new BodyJoint(joint, limb), angles.getMax() - angles.getMin()));
                }
            }
        }
        ranges.sort(Map.Entry.<BodyJoint, Double>comparingByValue(Comparator.reverseOrder()));
        var sorted = new LinkedHashMap<BodyJoint, Double>();
        ranges.forEach(range -> sorted.put(range.getKey(), range.getValue()));
        return sorted;
    }
}
