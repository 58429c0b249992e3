package slipway.reasoning.tolerance;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.NerveModel;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;

/**
 * Weighted draws of one person: each has a draw of the nerve model, a site, a spread of the sensitivity along the tract,
 * and, per family of tests, a tolerance. Answers the load of any posture in every draw; the response of the nerve to a
 * posture is computed once and kept. For use by one thread.
 */
public final class LoadDraws {
    private final NerveModel model;
    private final NerveModel walk;
    private final Draws draws;
    private final Posture rest;
    private final Map<Posture, PostureResponse> responses = new HashMap<>();
    private final Map<Posture, double[]> loadsPct = new HashMap<>();
    private double[] weights;
    private Map<TestFamily, double[]> tolerancePct = new EnumMap<>(TestFamily.class);
    private Map<TestFamily, List<Posture>> comfortable = new EnumMap<>(TestFamily.class);

    LoadDraws(NerveModel model, Draws draws, Posture rest) {
        this.model = model;
        this.walk = model.walk();
        this.draws = draws;
        this.rest = rest;
        this.weights = new double[draws.size()];
        Arrays.fill(weights, 1.0 / draws.size());
    }

    /** Weights, tolerances and comfortable positions as found; set once by the estimator. */
    void settle(
            double[] newWeights,
            Map<TestFamily, double[]> newTolerancePct,
            Map<TestFamily, List<Posture>> newComfortable) {
        weights = newWeights.clone();
        comfortable = Map.copyOf(newComfortable);
        tolerancePct = new EnumMap<>(TestFamily.class);
        tolerancePct.putAll(newTolerancePct);
    }

    /** Number of weighted draws. */
    public int size() {
        return draws.size();
    }

    /** The rest posture from which loads count. */
    public Posture rest() {
        return rest;
    }

    /** The weights, adding up to 1. */
    public double[] weights() {
        return weights.clone();
    }

    /** The weights of the draws at one site, 0 elsewhere. */
    public double[] weightsAt(Site site) {
        double[] at = weights.clone();
        int index = draws.sites().indexOf(site);
        for (int i = 0; i < at.length; i++) {
            at[i] = draws.siteOf(i) == index ? at[i] : 0;
        }
        return at;
    }

    /** Whether a site is so far up that a movement of the ankle reaches it only through the nerve. */
    public static boolean proximal(Site site) {
        return ToleranceData.proximal(site);
    }

    /** The modelled sites. */
    public List<Site> sites() {
        return draws.sites();
    }

    /** Tolerance in percent above rest in every draw; empty if nothing in this family tells it. */
    public Optional<double[]> tolerancePct(TestFamily family) {
        return Optional.ofNullable(tolerancePct.get(family)).map(double[]::clone);
    }

    /**
     * The largest load of a comfortable position of this family in percent above rest in every draw, never above the
     * tolerance; empty if there is none that fits the tests.
     */
    public Optional<double[]> comfortablePct(TestFamily family) {
        return comfortable.getOrDefault(family, List.of()).stream()
                .map(this::loadPct)
                .reduce(LoadDraws::larger);
    }

    private static double[] larger(double[] a, double[] b) {
        double[] larger = new double[a.length];
        Arrays.setAll(larger, i -> Math.max(a[i], b[i]));
        return larger;
    }

    /** Postures whose response was computed so far. */
    public int solvedPostures() {
        return responses.size();
    }

    /**
     * The load of a posture in every draw, in percent above the rest posture: (1 − α) × strain at the site + α × mean
     * positive strain along its tract. The array is shared: do not change it.
     */
    public double[] loadPct(Posture posture) {
        return loadsPct.computeIfAbsent(posture, p -> {
            double[] load = rawPct(p, draws.alpha());
            double[] atRest = rawPct(rest, draws.alpha());
            for (int i = 0; i < load.length; i++) {
                load[i] -= atRest[i];
            }
            return load;
        });
    }

    /**
     * As {@link #loadPct}, for a posture that hardly comes back: nothing is kept, and other threads may ask at the same
     * time if the nerve model allows it.
     */
    public double[] loadPctOnce(Posture posture) {
        double[] load = rawPct(model.respond(posture), draws.alpha());
        double[] atRest = rawPct(model.respond(rest), draws.alpha());
        Arrays.setAll(load, i -> load[i] - atRest[i]);
        return load;
    }

    /** Slide at a site between two postures in mm, distal positive, in every draw. */
    public double[] glideMm(Site site, Posture from, Posture to) {
        double[] start = response(from).glideMmAt(site);
        double[] end = response(to).glideMmAt(site);
        double[] glide = new double[size()];
        for (int i = 0; i < glide.length; i++) {
            glide[i] = end[draws.modelDraw(i)] - start[draws.modelDraw(i)];
        }
        return glide;
    }

    /** Solves postures that are not known yet, as neighbours: cheaper than one by one. */
    public void prepare(List<Posture> postures) {
        List<Posture> missing = postures.stream()
                .filter(posture -> !responses.containsKey(posture))
                .distinct()
                .toList();
        List<PostureResponse> answers = walk.respondAlong(missing);
        for (int i = 0; i < missing.size(); i++) {
            responses.put(missing.get(i), answers.get(i));
        }
    }

    private PostureResponse response(Posture posture) {
        return responses.computeIfAbsent(posture, walk::respond);
    }

    /** The load before rest is taken off, for any spread. */
    double[] rawPct(Posture posture, double[] alpha) {
        return rawPct(response(posture), alpha);
    }

    private double[] rawPct(PostureResponse response, double[] alpha) {
        List<Site> sites = draws.sites();
        double[][] strain = new double[sites.size()][];
        double[][] mean = new double[sites.size()][];
        for (int s = 0; s < strain.length; s++) {
            strain[s] = response.strainAt(sites.get(s));
            mean[s] = response.meanPositiveStrain(sites.get(s).tract());
        }
        double[] load = new double[size()];
        for (int i = 0; i < load.length; i++) {
            int s = draws.siteOf(i);
            int m = draws.modelDraw(i);
            load[i] = 100 * ((1 - alpha[i]) * strain[s][m] + alpha[i] * mean[s][m]);
        }
        return load;
    }

    Draws draws() {
        return draws;
    }

    /** Strain at one site and mean positive strain of its tract, in percent, for every draw whatever its own site. */
    double[] rawPctAt(Site site, Posture posture, double[] alpha) {
        PostureResponse response = response(posture);
        double[] strain = response.strainAt(site);
        double[] mean = response.meanPositiveStrain(site.tract());
        double[] load = new double[size()];
        for (int i = 0; i < load.length; i++) {
            int m = draws.modelDraw(i);
            load[i] = 100 * ((1 - alpha[i]) * strain[m] + alpha[i] * mean[m]);
        }
        return load;
    }
}
