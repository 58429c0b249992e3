package slipway.mechanics.pathway;

import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;

/**
 * The edges of one branch that one joint may lengthen.
 *
 * @param joint the joint
 * @param limb whose joint; the spine and the neck count as own
 * @param branch the branch, which decides the moment arm
 * @param edges indices of the edges
 * @param fromM arc length of the proximal end of each edge, m
 * @param toM arc length of the distal end of each edge, m
 */
record BedArm(Joint joint, Limb limb, Branch branch, int[] edges, double[] fromM, double[] toM) {
    /** Share of the joint's elongation that falls on each edge, per length of the edge, 1/m. */
    double[] sharePerM(JointBed bed) {
        double[] share = new double[edges.length];
        for (int i = 0; i < share.length; i++) {
            share[i] = bed.share(fromM[i], toM[i]) / (toM[i] - fromM[i]);
        }
        return share;
    }
}
