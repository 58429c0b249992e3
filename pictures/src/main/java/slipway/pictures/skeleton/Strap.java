package slipway.pictures.skeleton;

import slipway.pictures.space.V3;

/** A strap around the forefoot. */
public final class Strap {
    private Strap() {}

    /** Where the strap leaves the sole under the ball of the foot. */
    public static V3 forefoot(Leg leg) {
        return leg.foot().at(leg.ball(), -0.004, 0, -0.015);
    }

    /** The edges of the band around the forefoot: sole, then back of the foot; for each side of the foot. */
    public static V3 around(Leg leg, boolean sole, boolean outer) {
        return leg.foot().at(leg.ball(), -0.004, outer ? 0.03 : -0.03, sole ? -0.015 : 0.022);
    }
}
