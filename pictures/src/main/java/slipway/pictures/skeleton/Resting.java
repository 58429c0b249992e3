package slipway.pictures.skeleton;

import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Support;

/**
 * A body at rest on what carries it; the floor (or the top of what it lies on) is at height 0.
 *
 * @param standingOn the leg that carries it, where one does
 */
public record Resting(Support support, Skeleton skeleton, Limb standingOn) {
    /** Height of the underside of the pelvis: the top of the seat when sitting. */
    public double seatHeight() {
        return Solid.lowest(java.util.List.of(Flesh.belly(skeleton.trunk())), slipway.pictures.space.V3.Z);
    }
}
