package slipway.pictures.skeleton;

import slipway.mechanics.body.Limb;
import slipway.pictures.space.Frame;
import slipway.pictures.space.V3;

/**
 * Trunk, neck, head and both legs in the room; the arms follow from what the hands do.
 *
 * @param headCentre middle of the skull
 * @param head directions of the head
 */
public record Skeleton(Trunk trunk, V3 headCentre, Frame head, Leg own, Leg other) {

    static Skeleton of(V3 hips, Frame pelvis, BodyAngles angles) {
        Trunk trunk = Trunk.of(hips, pelvis, angles.spine(), angles.spineSide());
        // Half of the bend of the neck happens at its base, the whole of it reaches the head.
        Frame neck = trunk.thorax().pitched(0.55 * angles.neck());
        V3 centre = neck.at(trunk.neckBase(), BodyRatios.HEAD_FORWARD, 0, BodyRatios.HEAD_UP);
        return new Skeleton(
                trunk,
                centre,
                trunk.thorax().pitched(angles.neck()),
                Leg.of(hips.plus(pelvis.out(), BodyRatios.HALF_HIPS), pelvis, angles.own()),
                Leg.of(hips.plus(pelvis.out(), -BodyRatios.HALF_HIPS), pelvis.otherSide(), angles.other()));
    }

    Skeleton moved(V3 by) {
        return new Skeleton(trunk.moved(by), headCentre.plus(by), head, own.moved(by), other.moved(by));
    }

    public Leg leg(Limb limb) {
        return limb == Limb.OWN ? own : other;
    }

    /** The shoulder joint of a side. */
    public V3 shoulder(Limb limb) {
        double along = BodyRatios.SHOULDER_ALONG / BodyRatios.TRUNK;
        return trunk.at(along).plus(thorax(limb).out(), BodyRatios.HALF_SHOULDERS);
    }

    /** The directions of the thorax, {@code out} away from the midline on this side. */
    public Frame thorax(Limb limb) {
        return limb == Limb.OWN ? trunk.thorax() : trunk.thorax().otherSide();
    }

    /** The directions of the pelvis, {@code out} away from the midline on this side. */
    public Frame pelvis(Limb limb) {
        return limb == Limb.OWN ? trunk.pelvis() : trunk.pelvis().otherSide();
    }
}
