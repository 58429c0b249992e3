package slipway.reasoning.caseload;

import org.hipparchus.distribution.discrete.BinomialDistribution;
import slipway.reasoning.basis.Coefficients;

/**
 * Whether a group's share differs from a target by more than chance, with limits that get narrower with more people. Exact
 * binomial limits, interpolated between counts. Source: Spiegelhalter 2005, Stat Med 24:1185, appendix A.1.1.
 */
public final class Funnel {
    private static final Coefficients DATA = Coefficients.load("caseload.csv");

    private Funnel() {}

    /** Limits as shares. */
    public record Limits(double alarmLow, double warnLow, double warnHigh, double alarmHigh) {}

    /** Where a group stands. */
    public enum Place {
        WITHIN,
        /** Outside the limits that hold 95 %: one in twenty groups by chance alone. */
        LOOK,
        /** Outside the limits that hold 99.8 %. */
        UNUSUAL
    }

    /**
     * Limits for a group of some people.
     *
     * @param target share of all groups together, above 0 and below 1
     */
    public static Limits limits(double target, int people) {
        if (!(target > 0 && target < 1) || people < 1) {
            throw new IllegalArgumentException(
                    "a funnel needs a target within 0 and 1 and people, was %s, %d".formatted(target, people));
        }
        var counts = new BinomialDistribution(people, target);
        double warn = DATA.value("warn-level");
        double alarm = DATA.value("alarm-level");
        return new Limits(limit(counts, 1 - alarm), limit(counts, 1 - warn), limit(counts, warn), limit(counts, alarm));
    }

    private static double limit(BinomialDistribution counts, double level) {
        int r = counts.inverseCumulativeProbability(level);
        double above = counts.cumulativeProbability(r);
        double share = (above - level) / (above - counts.cumulativeProbability(r - 1));
        // Below the smallest count the limit is 0: no group can be outside.
        return Math.max(0, r - share) / counts.getNumberOfTrials();
    }

    /** Where a share of a group stands against a target. */
    public static Place place(double target, Shown.Share group) {
        Limits limits = limits(target, group.of());
        if (group.value() < limits.alarmLow() || group.value() > limits.alarmHigh()) {
            return Place.UNUSUAL;
        }
        return group.value() < limits.warnLow() || group.value() > limits.warnHigh() ? Place.LOOK : Place.WITHIN;
    }
}
