package slipway.reasoning.response.estimate;

import slipway.reasoning.tolerance.Interval;
import slipway.reasoning.tolerance.Weighted;

/** The excess over rest of the chance of at least one flare in the next 7 days, in every particle. For one thread. */
public final class WeekAhead {
    /** Days looked ahead. */
    public static final int DAYS = 7;

    private final double[] noFlare;
    private final double[] session;

    /** For this many particles. */
    public WeekAhead(int particles) {
        noFlare = new double[particles];
        session = new double[particles];
    }

    /** Starts with rest alone. */
    public void clear() {
        java.util.Arrays.fill(noFlare, 1);
    }

    /** Adds an exercise: so many sessions a day, each with this stress. */
    public void add(Particles particles, double logStress, int sessionsPerDay) {
        particles.flareChances(logStress, session);
        int n = DAYS * sessionsPerDay;
        for (int i = 0; i < noFlare.length; i++) {
            noFlare[i] *= power(1 - session[i], n);
        }
    }

    private static double power(double base, int exponent) {
        double result = 1;
        double square = base;
        for (int left = exponent; left > 0; left >>= 1) {
            if ((left & 1) == 1) {
                result *= square;
            }
            square *= square;
        }
        return result;
    }

    /**
     * Mean excess over rest: P(flare with exercise) − P(flare at rest) = (1 − q)⁷ (1 − Π (1 − p)ⁿ).
     *
     * @param restFlare chance of a flare on a day of rest, q
     */
    public double excess(Particles particles, double restFlare) {
        double[] weight = particles.weights();
        double sum = 0;
        for (int i = 0; i < noFlare.length; i++) {
            sum += weight[i] * (1 - noFlare[i]);
        }
        return power(1 - restFlare, DAYS) * sum;
    }

    /** Median and 90 % interval of the excess over the particles. */
    public Interval interval(Particles particles, double restFlare) {
        double rest = power(1 - restFlare, DAYS);
        double[] excess = new double[noFlare.length];
        for (int i = 0; i < excess.length; i++) {
            excess[i] = rest * (1 - noFlare[i]);
        }
        return Weighted.interval(excess, particles.weights());
    }
}
