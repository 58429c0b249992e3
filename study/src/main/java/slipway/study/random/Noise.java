package slipway.study.random;

/**
 * Random numbers by name. A number belongs to a purpose, a day and an index, and is the same however often and in
 * whatever order it is asked for. So two ways of dosing meet the same days, and their difference is not noise.
 *
 * <p>The mixing is the finaliser of SplitMix64 (Steele, Lea, Flood 2014, "Fast splittable pseudorandom number
 * generators", Figure 16).
 */
public final class Noise {
    private static final double UNIT = 0x1.0p-53;

    private final long key;

    private Noise(long key) {
        this.key = key;
    }

    /** The numbers of one person of one world. */
    public static Noise of(long seed, String world, long person) {
        long key = mix(seed + 0x9E3779B97F4A7C15L);
        for (int i = 0; i < world.length(); i++) {
            key = mix(key ^ (world.charAt(i) * 0xBF58476D1CE4E5B9L));
        }
        return new Noise(mix(key ^ mix(person + 0x632BE59BD9B4E019L)));
    }

    /** Above 0 and below 1. */
    public double uniform(int purpose, int day, int index) {
        return ((bits(purpose, day, index, 1) >>> 11) + 0.5) * UNIT;
    }

    /** Standard normal, by the transform of Box and Muller 1958. */
    public double normal(int purpose, int day, int index) {
        double radius = Math.sqrt(-2 * Math.log(uniform(purpose, day, index)));
        double turn = (bits(purpose, day, index, 2) >>> 11) * UNIT;
        return radius * Math.cos(2 * Math.PI * turn);
    }

    /** Laplace with standard deviation 1: heavier tails than a normal one. */
    public double laplace(int purpose, int day, int index) {
        double u = uniform(purpose, day, index) - 0.5;
        return -Math.signum(u) * Math.log1p(-2 * Math.abs(u)) / Math.sqrt(2);
    }

    /** Exponential with mean 1. */
    public double exponential(int purpose, int day, int index) {
        return -Math.log(uniform(purpose, day, index));
    }

    /** A seed for somebody else's generator. */
    public long seed(int purpose) {
        return bits(purpose, -1, -1, 3);
    }

    private long bits(int purpose, int day, int index, int lane) {
        long name = ((long) purpose << 44) ^ ((long) (day & 0xFFFFF) << 24) ^ ((long) (index & 0xFFFFF) << 4) ^ lane;
        return mix(key ^ mix(name * 0x9E3779B97F4A7C15L));
    }

    private static long mix(long value) {
        long z = value;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
