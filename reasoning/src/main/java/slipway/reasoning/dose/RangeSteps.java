package slipway.reasoning.dose;

import java.util.ArrayList;
import java.util.List;
import slipway.mechanics.body.Posture;
import slipway.reasoning.tolerance.Movement;

/**
 * The end postures that a candidate can have: the leading joint at every multiple of the angle step, the others moved in
 * proportion and rounded towards their start.
 */
final class RangeSteps {
    /** Angles closer than this are the same. */
    private static final double SAME_DEG = 1e-9;

    private RangeSteps() {}

    /** The end postures from the nearest to the furthest; empty if not even one step fits. */
    static List<Posture> ends(ExerciseCandidate candidate) {
        double step = DoseData.value("angle-step");
        Movement lead = candidate.lead();
        int direction = lead.direction();
        var ends = new ArrayList<Posture>();
        double angle = inward(lead.fromDeg(), direction, step) + direction * step;
        while (direction * (lead.toDeg() - angle) >= -SAME_DEG) {
            ends.add(end(candidate, angle, step));
            angle += direction * step;
        }
        return ends;
    }

    private static Posture end(ExerciseCandidate candidate, double leadDeg, double step) {
        Movement lead = candidate.lead();
        double fraction = (leadDeg - lead.fromDeg()) / (lead.toDeg() - lead.fromDeg());
        Posture end = candidate.start();
        for (Movement move : candidate.moves()) {
            double exact = move.fromDeg() + fraction * (move.toDeg() - move.fromDeg());
            double rounded = inward(exact, move.direction(), step);
            boolean behindStart = move.direction() * (rounded - move.fromDeg()) < 0;
            end = move.at(end, behindStart ? move.fromDeg() : rounded);
        }
        return end;
    }

    /** The multiple of the step at or before an angle, seen in the direction of the movement. */
    private static double inward(double angleDeg, int direction, double step) {
        double steps = direction * angleDeg / step;
        // Adding zero turns a negative zero into a plain one.
        return direction * Math.floor(steps + SAME_DEG) * step + 0.0;
    }

    /** The postures between the start and an end, at most one angle step apart in every joint; neither end included. */
    static List<Posture> between(ExerciseCandidate candidate, Posture end) {
        double largestDeg = 0;
        for (Movement move : candidate.moves()) {
            double travel = end.angleDeg(move.joint(), move.limb()) - move.fromDeg();
            largestDeg = Math.max(largestDeg, Math.abs(travel));
        }
        int pieces = (int) Math.ceil(largestDeg / DoseData.value("angle-step") - SAME_DEG);
        var between = new ArrayList<Posture>();
        for (int piece = 1; piece < pieces; piece++) {
            between.add(candidate.start().towards(end, (double) piece / pieces));
        }
        return between;
    }
}
