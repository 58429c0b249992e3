package slipway.mechanics.body;

/**
 * What the nerve model needs to know about a body.
 *
 * @param statureM standing height, m, within 1.0 and 2.3
 */
public record Person(double statureM) {
    /** Stature that published groups are taken to have where a study does not give it: assumption, 1.70 m. */
    public static final Person STANDARD = new Person(1.70);

    public Person {
        if (!(statureM >= 1.0 && statureM <= 2.3)) {
            throw new IllegalArgumentException("stature must be within 1.0 and 2.3 m, was " + statureM);
        }
    }

    /** Size relative to the standard stature; moment arms and lengths scale with it. */
    public double scale() {
        return statureM / STANDARD.statureM;
    }
}
