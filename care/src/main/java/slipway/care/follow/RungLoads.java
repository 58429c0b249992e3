package slipway.care.follow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipway.care.follow.HomeExercise.LoadAt;
import slipway.mechanics.body.Posture;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.dose.DesignedRange;
import slipway.reasoning.dose.DosedExercise;
import slipway.reasoning.plan.PlanResult;
import slipway.reasoning.tolerance.LoadDraws;
import slipway.reasoning.tolerance.TestFamily;
import slipway.reasoning.tolerance.Weighted;

/**
 * The largest load of an exercise on each rung as a share of the tolerance that the examination gave, draw by draw: what
 * load and tolerance have in common cancels out.
 */
final class RungLoads {
    private static final double MEDIAN = 0.5;
    /** Postures looked at on the way to the furthest end; the way there is part of the repetition. */
    private static final int STEPS = 20;

    /** Less load than this share of the tolerance is all the same. */
    private static final double LEAST_SHARE =
            Coefficients.load("response/course.csv").value("least-share");

    private final LoadDraws draws;

    private RungLoads(LoadDraws draws) {
        this.draws = draws;
    }

    /** Empty if no suspected place is modelled. */
    static Optional<RungLoads> of(PlanResult result) {
        return result.tolerance().draws().map(RungLoads::new);
    }

    /** Median share at each part of the range; empty if nothing tells the tolerance that this movement needs. */
    List<LoadAt> peaks(DosedExercise dosed, List<Double> rangeFractions) {
        var peaks = new ArrayList<LoadAt>();
        for (double fraction : rangeFractions) {
            Optional<double[]> shares = shares(dosed.range(), fraction);
            if (shares.isEmpty()) {
                return List.of();
            }
            peaks.add(new LoadAt(fraction, Weighted.quantile(shares.get(), draws.weights(), MEDIAN)));
        }
        return peaks;
    }

    /** Spread of the log of the share at the whole range. */
    double logSd(DosedExercise dosed) {
        double[] shares = shares(dosed.range(), 1).orElseThrow();
        double[] weights = draws.weights();
        double mean = 0;
        for (int i = 0; i < shares.length; i++) {
            mean += weights[i] * Math.log(shares[i]);
        }
        double squares = 0;
        for (int i = 0; i < shares.length; i++) {
            double off = Math.log(shares[i]) - mean;
            squares += weights[i] * off * off;
        }
        return Math.sqrt(squares);
    }

    private Optional<double[]> shares(DesignedRange range, double fraction) {
        List<Posture> way = way(range, fraction);
        Optional<double[]> tolerance = tolerancePct(way);
        return tolerance.map(limit -> {
            double[] share = new double[limit.length];
            Arrays.fill(share, LEAST_SHARE);
            for (Posture posture : way) {
                double[] load = draws.loadPct(posture);
                for (int i = 0; i < share.length; i++) {
                    share[i] = Math.max(share[i], load[i] / limit[i]);
                }
            }
            return share;
        });
    }

    private List<Posture> way(DesignedRange range, double fraction) {
        Posture start = range.candidate().start();
        var way = new ArrayList<Posture>();
        for (int i = 0; i <= Math.round(STEPS * fraction); i++) {
            way.add(start.towards(range.end(), (double) i / STEPS));
        }
        draws.prepare(way);
        return way;
    }

    /** Of the families that the movement passes through the lower one, as in the design of its range. */
    private Optional<double[]> tolerancePct(List<Posture> way) {
        Set<TestFamily> families = EnumSet.noneOf(TestFamily.class);
        way.forEach(posture -> families.add(TestFamily.of(posture)));
        double[] least = new double[draws.size()];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (TestFamily family : families) {
            Optional<double[]> tolerance = draws.tolerancePct(family);
            if (tolerance.isEmpty()) {
                return Optional.empty();
            }
            for (int i = 0; i < least.length; i++) {
                least[i] = Math.min(least[i], tolerance.get()[i]);
            }
        }
        return Optional.of(least);
    }
}
