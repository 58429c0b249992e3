package slipway.care.figure;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.KeyPose;
import slipway.exercises.exercise.PropPlace;
import slipway.exercises.exercise.Setting;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.pictures.figure.FigureScene;
import slipway.pictures.figure.Pose;
import slipway.pictures.figure.PropUse;
import slipway.pictures.figure.View;

/** The scenes of an exercise: where it starts and where it goes. */
public final class ExerciseFigures {
    private ExerciseFigures() {}

    /** The exercise in one posture, without a movement. */
    public static FigureScene still(Exercise exercise, Posture posture, Side side) {
        KeyPose first = exercise.movement().poses().get(0);
        return scene(exercise, new Pose(exercise.setting().support(), posture, first.arms()), side);
    }

    /** The exercise at the end of its movement, with its start as a ghost and an arrow from there. */
    public static FigureScene movement(Exercise exercise, Posture start, Posture end, Side side) {
        var poses = exercise.movement().poses();
        KeyPose last = poses.get(poses.size() > 1 ? 1 : 0);
        var from = new Pose(exercise.setting().support(), start, poses.get(0).arms());
        return scene(exercise, new Pose(exercise.setting().support(), end, last.arms()), side).from(from);
    }

    private static FigureScene scene(Exercise exercise, Pose pose, Side side) {
        Set<PropUse> props = EnumSet.noneOf(PropUse.class);
        exercise.setting().props().forEach(use -> place(use, exercise.setting()).ifPresent(props::add));
        return new FigureScene(
                side, pose, props, View.usual(exercise.setting().support()), Optional.empty(), Optional.empty());
    }

    /** A thing under the belly or the foot has no picture of its own; the words name it. */
    private static Optional<PropUse> place(Setting.PropUse use, Setting setting) {
        return switch (use.place()) {
            case AROUND_FOREFOOT -> Optional.of(PropUse.STRAP);
            case UNDER_HEAD -> Optional.of(PropUse.PILLOW_UNDER_HEAD);
            case UNDER_KNEES, UNDER_KNEE -> Optional.of(PropUse.PILLOW_UNDER_KNEES);
            case UNDER_ANKLES -> Optional.of(PropUse.PILLOW_UNDER_ANKLES);
            case BETWEEN_KNEES -> Optional.of(PropUse.PILLOW_BETWEEN_KNEES);
            case UNDER_HEEL -> Optional.of(PropUse.TOWEL_UNDER_HEEL);
            case UNDER_BELLY -> Optional.empty();
            default -> standing(use, setting);
        };
    }

    private static Optional<PropUse> standing(Setting.PropUse use, Setting setting) {
        boolean soft = use.place() == PropPlace.UNDER_FOOT || use.place() == PropPlace.UNDER_FOREFOOT;
        PropUse usual = PropUse.usual(use.prop(), setting.support());
        return soft && usual != PropUse.STEP ? Optional.empty() : Optional.of(usual);
    }
}
