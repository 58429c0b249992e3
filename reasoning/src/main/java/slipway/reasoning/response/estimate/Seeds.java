package slipway.reasoning.response.estimate;

/** A stream of random bits that can be split by number: step 7 of a person has its own stream whatever came before. */
public final class Seeds {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private long state;

    private Seeds(long state) {
        this.state = state;
    }

    /** The stream of a step. */
    static Seeds of(long seed, long step) {
        return new Seeds(split(seed, step));
    }

    /** The seed of a part, for example of one person of a study. */
    public static long split(long seed, long part) {
        return mix(seed + mix(part * GOLDEN + GOLDEN));
    }

    /** 64 random bits. */
    long next() {
        state += GOLDEN;
        return mix(state);
    }

    /** Evenly within 0 and 1, 1 excluded. */
    double uniform() {
        return (next() >>> 11) * 0x1.0p-53;
    }

    /** SplitMix64 (Steele, Lea & Flood 2014). */
    private static long mix(long z) {
        long x = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        x = (x ^ (x >>> 27)) * 0x94D049BB133111EBL;
        return x ^ (x >>> 31);
    }
}
