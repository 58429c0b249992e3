package slipway.mechanics.pathway;

import slipway.mechanics.evidence.BundledTable;
import slipway.mechanics.nerve.Pathway;

/**
 * Moment arms of the bed at the front of the leg, relative to those at the back, so that they are drawn with them: {@code
 * geometry-front.csv}.
 */
final class FrontArms {
    /** Bending the hip shortens the bed in front of it. */
    static final double HIP_RATIO = ratio("hip");

    /** Bending the knee lengthens the muscle in which the branch ends. */
    static final double KNEE_RATIO = ratio("knee");

    private FrontArms() {}

    private static double ratio(String joint) {
        return BundledTable.read(Pathway.FRONT.geometryTable()).stream()
                .filter(row ->
                        row.get("kind").equals("ratio") && row.get("branch").equals(joint))
                .mapToDouble(row -> Double.parseDouble(row.get("value")))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        Pathway.FRONT.geometryTable() + ": no ratio for the arm of the " + joint));
    }
}
