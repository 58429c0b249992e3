package slipway.care.loads;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.KeyPose;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;
import slipway.reasoning.basis.Coefficients;

/** The body for which exercises are compared, and the way that an exercise takes it. */
final class StandardBody {
    private static final Coefficients DATA = Coefficients.load("visit.csv");
    private static final double CM_PER_M = 100;

    private StandardBody() {}

    /** Its nerves in this many draws. */
    static PathwayModel nerve(Pathway pathway, int draws) {
        var person = new Person(DATA.value("standard-stature-cm") / CM_PER_M);
        return PathwayModel.of(pathway, person, FittedParameters.bundled().draws(draws, FittedParameters.SEED));
    }

    /** From the first to the second pose in even steps; one posture if there is no second. */
    static List<Posture> way(Exercise exercise) {
        List<KeyPose> poses = exercise.movement().poses();
        Posture start = poses.get(0).posture(Map.of());
        if (poses.size() < 2) {
            return List.of(start);
        }
        Posture end = poses.get(1).posture(Map.of());
        int steps = (int) DATA.value("standard-steps");
        var way = new ArrayList<Posture>();
        for (int i = 0; i <= steps; i++) {
            way.add(start.towards(end, (double) i / steps));
        }
        return way;
    }

    /** Joints that take part and that the nerve model leaves out, by name. */
    static List<String> notModelled(Exercise exercise, Pathway pathway) {
        var joints = new TreeSet<String>();
        exercise.movement()
                .poses()
                .forEach(pose -> joints.addAll(PathwayModel.notModelled(pose.posture(Map.of()), pathway)));
        return List.copyOf(joints);
    }
}
