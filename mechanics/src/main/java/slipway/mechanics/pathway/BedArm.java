package slipway.mechanics.pathway;

import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;

/**
 * The edges of one branch that one joint lengthens.
 *
 * @param joint the joint
 * @param limb whose joint; the spine and the neck count as own
 * @param branch the branch, which decides the moment arm
 * @param edges indices of the edges
 * @param sharePerM share of the joint's elongation that falls on each edge, per length of the edge, 1/m
 */
record BedArm(Joint joint, Limb limb, Branch branch, int[] edges, double[] sharePerM) {}
