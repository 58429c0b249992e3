package slipway.reasoning.tolerance;

import java.util.SplittableRandom;

/**
 * Seeded columns of numbers in (0, 1): each column holds the middle of every one of {@code size} equal strata once, in
 * an order of its own, so that even small samples have exact margins. A column depends only on seed, size and name.
 */
final class LatinHypercube {
    private final int size;
    private final long seed;

    LatinHypercube(int size, long seed) {
        this.size = size;
        this.seed = seed;
    }

    double[] column(String name) {
        // An odd multiplier spreads the few bits of a short name over the whole seed.
        var random = new SplittableRandom(seed ^ (name.hashCode() * 0x9E3779B97F4A7C15L));
        double[] column = new double[size];
        for (int i = 0; i < size; i++) {
            int other = random.nextInt(i + 1);
            column[i] = column[other];
            column[other] = (i + 0.5) / size;
        }
        return column;
    }
}
