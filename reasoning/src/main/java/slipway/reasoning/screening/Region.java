package slipway.reasoning.screening;

/** The limb that a question is about. */
public enum Region {
    ANY,
    LEG,
    ARM;

    /** Whether a question of this region is asked about the given limb. */
    public boolean concerns(Region limb) {
        return this == ANY || limb == ANY || this == limb;
    }
}
