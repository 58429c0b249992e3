package slipway.exercises.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.KeyPose;
import slipway.exercises.exercise.MovingSide;
import slipway.exercises.exercise.Purpose;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.YamlDocument;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Support;

/** What a movement must keep to that a schema cannot say. */
final class MovementChecks {
    /** A glide passes its end positions or touches them briefly: common practice. */
    private static final double LONGEST_TOUCH_SECONDS = 1;

    private static final Map<Support, Set<String>> BASES = Map.of(
            Support.LYING, Set.of("lying", "lying knees bent"),
            Support.SIDE_LYING, Set.of("side-lying"),
            Support.PRONE, Set.of("prone"),
            Support.SITTING, Set.of("sitting", "slump"),
            Support.LONG_SITTING, Set.of("long sitting"),
            Support.STANDING, Set.of("standing", "standing bend"),
            Support.KNEELING, Set.of("kneeling"),
            Support.ALL_FOURS, Set.of("kneeling"));

    private MovementChecks() {}

    static List<Mistake> check(YamlDocument document, Exercise exercise) {
        var mistakes = new ArrayList<Mistake>();
        var setting = exercise.setting();
        var bases = BASES.getOrDefault(setting.support(), Set.of());
        if (!bases.contains(setting.base().name())) {
            mistakes.add(document.mistake(
                    "/position/base",
                    "%s starts from %s, was \"%s\""
                            .formatted(
                                    setting.support().key(),
                                    String.join(" or ", bases.stream().sorted().toList()),
                                    setting.base().name())));
        }
        checkSide(document, exercise, mistakes);
        if (exercise.purpose() == Purpose.GLIDE) {
            checkGlide(document, exercise, mistakes);
        }
        return mistakes;
    }

    private static void checkSide(YamlDocument document, Exercise exercise, List<Mistake> mistakes) {
        var moving = exercise.movement().rangesDeg(Map.of()).keySet();
        boolean own = moving.stream().anyMatch(joint -> joint.joint().paired() && joint.limb() == Limb.OWN);
        boolean other = moving.stream().anyMatch(joint -> joint.limb() == Limb.OTHER);
        MovingSide side = exercise.movement().side();
        boolean still = exercise.movement().poses().size() == 1;
        boolean fits = switch (side) {
            case AFFECTED -> (own || still) && !other;
            case OTHER -> other && !own;
            case BOTH, ALTERNATE -> (own && other) || still;
            case TRUNK -> true;
        };
        if (!fits) {
            mistakes.add(document.mistake(
                    "/position/side",
                    "the poses must move what the side says, was \"%s\" while these move: %s"
                            .formatted(side.key(), moving)));
        }
    }

    private static void checkGlide(YamlDocument document, Exercise exercise, List<Mistake> mistakes) {
        var poses = exercise.movement().poses();
        if (poses.size() < 2) {
            mistakes.add(document.mistake("/poses", "a glide needs at least 2 poses, had " + poses.size()));
        }
        for (int i = 0; i < poses.size(); i++) {
            KeyPose pose = poses.get(i);
            if (pose.holdSeconds() > LONGEST_TOUCH_SECONDS) {
                mistakes.add(document.mistake(
                        "/poses/" + i + "/hold",
                        "a glide holds no end position longer than %.0f s, was %s s"
                                .formatted(LONGEST_TOUCH_SECONDS, pose.holdSeconds())));
            }
        }
    }
}
