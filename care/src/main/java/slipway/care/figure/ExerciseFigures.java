package slipway.care.figure;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.KeyPose;
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

    /** The exercise in one of its key poses, with the angles shown in pictures. */
    public static FigureScene pose(Exercise exercise, KeyPose pose, Side side) {
        return scene(exercise, new Pose(exercise.setting().support(), pose.posture(Map.of()), pose.arms()), side);
    }

    /** The exercise at the end of its movement, with its start as a ghost and an arrow from there. */
    public static FigureScene movement(Exercise exercise, Posture start, Posture end, Side side) {
        var poses = exercise.movement().poses();
        KeyPose last = poses.get(poses.size() > 1 ? 1 : 0);
        var from = new Pose(exercise.setting().support(), start, poses.get(0).arms());
        return scene(exercise, new Pose(exercise.setting().support(), end, last.arms()), side)
                .from(from);
    }

    private static FigureScene scene(Exercise exercise, Pose pose, Side side) {
        Set<PropUse> props = EnumSet.noneOf(PropUse.class);
        exercise.setting()
                .props()
                .forEach(use -> props.add(PropUse.of(
                        use.prop(), use.place().key(), exercise.setting().support())));
        return new FigureScene(
                side, pose, props, View.usual(exercise.setting().support()), Optional.empty(), Optional.empty());
    }
}
