package slipway.reasoning.response.calibration;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.BetaDistribution;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.tolerance.Interval;

/**
 * Predicted weekly chances against reported flares.
 *
 * @param bins those that hold any week, lowest first
 * @param weeks number of weeks
 * @param brier mean squared error of the predicted chance (Brier 1950); 0 is perfect. Not a number without weeks
 * @param brierOfShare the same if everyone had been told the share that was observed in all; lower is better than this
 */
public record Calibration(List<Bin> bins, int weeks, double brier, double brierOfShare) {
    private static final Coefficients DATA = Coefficients.load("response/calibration.csv");
    private static final int BINS = (int) DATA.value("bins");
    private static final double TAIL = (1 - DATA.value("coverage")) / 2;

    public Calibration {
        bins = List.copyOf(bins);
    }

    /** Fewer weeks than this say next to nothing. */
    public static int leastWeeks() {
        return (int) DATA.value("least-weeks");
    }

    /** Puts weeks of any number of people together; their order does not matter. */
    public static Calibration of(List<Week> weeks) {
        var bins = new ArrayList<Bin>();
        for (int i = 0; i < BINS; i++) {
            double from = (double) i / BINS;
            double to = (double) (i + 1) / BINS;
            boolean last = i == BINS - 1;
            List<Week> within = weeks.stream()
                    .filter(week -> week.predicted() >= from && (week.predicted() < to || last))
                    .toList();
            if (!within.isEmpty()) {
                bins.add(bin(from, to, within));
            }
        }
        double share = flared(weeks) / (double) weeks.size();
        double brier = weeks.stream()
                        .mapToDouble(week -> error(week.predicted(), week.flared()))
                        .sum()
                / weeks.size();
        return new Calibration(bins, weeks.size(), brier, share * (1 - share));
    }

    private static Bin bin(double from, double to, List<Week> weeks) {
        double predicted = weeks.stream().mapToDouble(Week::predicted).sum() / weeks.size();
        int flared = flared(weeks);
        return new Bin(
                from, to, weeks.size(), Math.min(to, Math.max(from, predicted)), flared, share(flared, weeks.size()));
    }

    private static int flared(List<Week> weeks) {
        return (int) weeks.stream().filter(Week::flared).count();
    }

    private static double error(double predicted, boolean flared) {
        double off = predicted - (flared ? 1 : 0);
        return off * off;
    }

    /** The share with its exact interval (Clopper & Pearson 1934): never too narrow, also for few weeks. */
    static Interval share(int hits, int of) {
        double low = hits == 0 ? 0 : new BetaDistribution(hits, of - hits + 1.0).inverseCumulativeProbability(TAIL);
        double high =
                hits == of ? 1 : new BetaDistribution(hits + 1.0, of - hits).inverseCumulativeProbability(1 - TAIL);
        return new Interval((double) hits / of, low, high);
    }
}
