package slipway.study.load;

import java.io.Serializable;
import java.util.List;
import slipway.study.data.StudyData;

/**
 * Loads of every body, place, exercise step and draw. Immutable, shared by all threads; about 400 kB. Made once in a run
 * by {@link LoadTables}.
 */
public final class LoadTable implements Serializable {
    private static final long serialVersionUID = 1L;

    private final double[] bodyWeights;
    private final List<TroublePlace> places;
    private final SiteLoads[][] loads;
    private final int draws;

    LoadTable(double[] bodyWeights, List<TroublePlace> places, SiteLoads[][] loads, int draws) {
        this.bodyWeights = bodyWeights;
        this.places = List.copyOf(places);
        this.loads = loads;
        this.draws = draws;
    }

    static List<Double> statures() {
        return StudyData.table("bodies.csv").stream()
                .map(row -> Double.valueOf(row.get("statureM")))
                .toList();
    }

    static double[] statureWeights() {
        return StudyData.table("bodies.csv").stream()
                .mapToDouble(row -> Double.parseDouble(row.get("weight")))
                .toArray();
    }

    /** Which body a number in (0, 1) falls to. */
    public int bodyAt(double uniform) {
        return pick(bodyWeights, uniform);
    }

    /** Which place a number in (0, 1) falls to. */
    public int placeAt(double uniform) {
        return pick(places.stream().mapToDouble(TroublePlace::weight).toArray(), uniform);
    }

    /** Which nerve a number in (0, 1) falls to. */
    public int drawAt(double uniform) {
        return Math.min(draws - 1, (int) (uniform * draws));
    }

    /** The places. */
    public List<TroublePlace> places() {
        return places;
    }

    /** The true loads of a nerve. */
    public LoadProfile truth(int body, int place, int draw, double spread) {
        return loads[body][place].of(draw, spread);
    }

    /** What the ways of dosing are shown for such a body and place. */
    public LoadProfile seen(int body, int place) {
        return loads[body][place].seen();
    }

    /** The exercise of each rung, as a position in the list of the place. */
    public List<Integer> exerciseOfRung(int body, int place) {
        return loads[body][place].exerciseOfRung();
    }

    private static int pick(double[] weights, double uniform) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        double left = uniform * sum;
        int picked = 0;
        while (picked < weights.length - 1 && left >= weights[picked]) {
            left -= weights[picked];
            picked++;
        }
        return picked;
    }
}
