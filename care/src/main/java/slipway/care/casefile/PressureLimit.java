package slipway.care.casefile;

import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Side;

/**
 * An end position that provokes the place itself. Exercises stay short of it.
 *
 * @param towardsPositive whether the limit is an upper one of the joint angle rather than a lower one
 * @param limitDeg joint angle in degrees, sign as in postures
 */
public record PressureLimit(Side side, Joint joint, boolean towardsPositive, double limitDeg, String because) {}
