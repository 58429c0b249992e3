package slipway.mechanics.body;

/** Which limb of a posture: the one whose nerve is looked at, or the one of the other side. */
public enum Limb {
    /** The limb of the nerve that is looked at. The spine and the neck, which have no side, count as own. */
    OWN,
    /** The limb of the other side; written with the prefix {@code other-}. */
    OTHER;

    /** The other one of the two. */
    public Limb opposite() {
        return this == OWN ? OTHER : OWN;
    }
}
