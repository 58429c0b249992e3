package slipway.study.load;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Strain of every tabulated posture at one place of one body, in every draw: first the rest posture, then the postures of
 * each exercise from its start to its farthest, then the leg raises.
 */
final class SiteLoads implements Serializable {
    private static final long serialVersionUID = 1L;

    private final int exercises;
    private final int steps;
    private final double raiseStepDeg;
    /** Percent, by draw and posture: at the place, and as the mean positive strain of the tract. */
    private final double[][] placePct;

    private final double[][] tractPct;
    private final int[] order;
    private final LoadProfile seen;

    SiteLoads(int exercises, Tabulation how, double[][] placePct, double[][] tractPct) {
        this.exercises = exercises;
        this.steps = how.rangeSteps();
        this.raiseStepDeg = how.raiseStepDeg();
        this.placePct = placePct;
        this.tractPct = tractPct;
        double[] unordered = medianRungs(how.spreadSeen());
        order = IntStream.range(0, unordered.length)
                .boxed()
                .sorted(Comparator.comparingDouble(rung -> unordered[rung]))
                .mapToInt(Integer::intValue)
                .toArray();
        seen = medianProfile(how.spreadSeen());
    }

    /** What the ways of dosing are shown: medians over the draws. */
    LoadProfile seen() {
        return seen;
    }

    /** The nerve of one draw whose sensitivity is spread along the tract by a share. */
    LoadProfile of(int draw, double spread) {
        double[] rungs = rungs(draw, spread);
        return new LoadProfile(ordered(rungs), raises(draw, spread), raiseStepDeg);
    }

    /** Which exercise a rung belongs to, by position in the list of the site. */
    List<Integer> exerciseOfRung() {
        return Arrays.stream(order).map(rung -> rung / steps).boxed().toList();
    }

    private double load(int draw, int posture, double spread) {
        double here = (1 - spread) * placePct[draw][posture] + spread * tractPct[draw][posture];
        double rest = (1 - spread) * placePct[draw][0] + spread * tractPct[draw][0];
        return here - rest;
    }

    private double[] rungs(int draw, double spread) {
        double[] rungs = new double[exercises * steps];
        for (int e = 0; e < exercises; e++) {
            double peak = 0;
            for (int s = 0; s <= steps; s++) {
                peak = Math.max(peak, load(draw, 1 + e * (steps + 1) + s, spread));
                if (s > 0) {
                    rungs[e * steps + s - 1] = peak;
                }
            }
        }
        return rungs;
    }

    private double[] raises(int draw, double spread) {
        int first = 1 + exercises * (steps + 1);
        double[] raises = new double[placePct[draw].length - first];
        Arrays.setAll(raises, i -> load(draw, first + i, spread));
        return raises;
    }

    private double[] ordered(double[] rungs) {
        double[] sorted = new double[rungs.length];
        Arrays.setAll(sorted, i -> rungs[order[i]]);
        return sorted;
    }

    private double[] medianRungs(double spread) {
        return medians(IntStream.range(0, placePct.length)
                .mapToObj(draw -> rungs(draw, spread))
                .toList());
    }

    private LoadProfile medianProfile(double spread) {
        double[] raises = medians(IntStream.range(0, placePct.length)
                .mapToObj(draw -> raises(draw, spread))
                .toList());
        return new LoadProfile(ordered(medianRungs(spread)), raises, raiseStepDeg);
    }

    private static double[] medians(List<double[]> rows) {
        double[] medians = new double[rows.get(0).length];
        for (int i = 0; i < medians.length; i++) {
            int column = i;
            double[] values =
                    rows.stream().mapToDouble(row -> row[column]).sorted().toArray();
            int half = values.length / 2;
            medians[i] = values.length % 2 == 1 ? values[half] : 0.5 * (values[half - 1] + values[half]);
        }
        return medians;
    }
}
