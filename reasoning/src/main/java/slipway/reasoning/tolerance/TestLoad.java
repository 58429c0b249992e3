package slipway.reasoning.tolerance;

import java.util.List;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Posture;

/** The load at which a test gave its response, in every draw, with the error that the reading of the angle leaves. */
final class TestLoad {
    private final String id;
    private final double sdDeg;
    private final double[] centrePct;
    private final double[] errorPct;

    private TestLoad(String id, double sdDeg, double[] centrePct, double[] errorPct) {
        this.id = id;
        this.sdDeg = sdDeg;
        this.centrePct = centrePct;
        this.errorPct = errorPct;
    }

    /** Reads the load of a test one error of reading on both sides of its angle. */
    static TestLoad of(NeuralTest test, LoadDraws loads) {
        Movement movement = test.movement();
        Joint joint = movement.joint();
        double sdDeg = ToleranceData.onsetErrorDeg(joint);
        double lessDeg = clamp(joint, test.reachedDeg() - movement.direction() * sdDeg);
        double moreDeg = clamp(joint, test.reachedDeg() + movement.direction() * sdDeg);
        double[] less = loads.loadPct(movement.at(test.start(), lessDeg));
        double[] more = loads.loadPct(movement.at(test.start(), moreDeg));
        double floorPct = ToleranceData.COEFFICIENTS.value("load-error-floor-pct");
        double[] error = new double[less.length];
        for (int i = 0; i < error.length; i++) {
            double perDeg = (more[i] - less[i]) / Math.abs(moreDeg - lessDeg);
            // A movement that takes load off, or adds none, says nothing about the angle: only its load counts.
            error[i] = Math.max(perDeg * sdDeg, floorPct);
        }
        return new TestLoad(test.id(), sdDeg, loads.loadPct(test.reached()), error);
    }

    /** The postures that reading a test takes. */
    static List<Posture> postures(NeuralTest test) {
        Movement movement = test.movement();
        double sdDeg = ToleranceData.onsetErrorDeg(movement.joint());
        return List.of(
                movement.at(test.start(), clamp(movement.joint(), test.reachedDeg() - sdDeg)),
                test.reached(),
                movement.at(test.start(), clamp(movement.joint(), test.reachedDeg() + sdDeg)));
    }

    private static double clamp(Joint joint, double angleDeg) {
        return Math.min(joint.highDeg(), Math.max(joint.lowDeg(), angleDeg));
    }

    String id() {
        return id;
    }

    double centrePct(int i) {
        return centrePct[i];
    }

    /** Standard error of the load at the response, in percent. */
    double errorPct(int i) {
        return errorPct[i];
    }

    /** Load per degree of the moved joint, never below the floor. */
    double perDeg(int i) {
        return errorPct[i] / sdDeg;
    }

    double[] centresPct() {
        return centrePct;
    }
}
