package slipway.reasoning.dose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.mechanics.nerve.NerveModel;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.tolerance.Interval;
import slipway.reasoning.tolerance.LoadDraws;
import slipway.reasoning.tolerance.NeuralFindings;
import slipway.reasoning.tolerance.SuspectedSite;
import slipway.reasoning.tolerance.ToleranceEstimator;
import slipway.reasoning.tolerance.Weighted;

/**
 * What movements do at one site of a body of which nothing is known but its size: glide, rise of load, and the ratio of
 * the two by which movements are called sliding or loading. The sensitivity is spread as before any test. For use by one
 * thread.
 */
public final class StandardLoads {
    private static final String REST = "lying knees bent";

    private final LoadDraws draws;
    private final Site site;

    private StandardLoads(LoadDraws draws, Site site) {
        this.draws = draws;
        this.site = site;
    }

    /** The loads at a site. */
    public static StandardLoads at(NerveModel nerve, Site site) {
        var nothing = new NeuralFindings(
                Side.RIGHT,
                List.of(new SuspectedSite(site.name(), 1, Optional.of(site))),
                Position.get(REST).posture(),
                List.of(),
                List.of(),
                false,
                List.of());
        LoadDraws draws = ToleranceEstimator.estimate(nerve, nothing).draws().orElseThrow();
        return new StandardLoads(draws, site);
    }

    /**
     * What a movement does.
     *
     * @param glideMm how far the nerve travels past the site in one direction of the movement
     * @param netGlideMm from start to end, distal positive
     * @param risePct by how much the highest load is above that of the start, percent of strain
     * @param glideToLoad mm of glide per percent of rise
     * @param label what the ratio is called
     */
    public record Loads(Interval glideMm, Interval netGlideMm, Interval risePct, double glideToLoad, Label label) {}

    /** What the ratio of glide to load is called. */
    public enum Label {
        /** More glide for the load than most movements. */
        SLIDES("slides"),
        /** Neither. */
        BOTH("slides and loads"),
        /** Less glide for the load than most movements. */
        LOADS("loads"),
        /** Too little glide to speak of. */
        NO_MOVEMENT("no movement shown");

        private final String words;

        Label(String words) {
            this.words = words;
        }

        /** For a table. */
        public String words() {
            return words;
        }

        static Label of(double glideMm, double glideToLoad) {
            if (glideMm < DoseData.value("least-glide")) {
                return NO_MOVEMENT;
            }
            if (glideToLoad >= DoseData.value("slides-from")) {
                return SLIDES;
            }
            return glideToLoad < DoseData.value("loads-below") ? LOADS : BOTH;
        }
    }

    /**
     * The loads along a movement.
     *
     * @param way postures from the start to the end, both included
     */
    public Loads along(List<Posture> way) {
        draws.prepare(way);
        var profile = new LoadProfile(draws, site, way.get(0));
        new ArrayList<>(way).subList(1, way.size()).forEach(profile::add);
        double[] none = new double[draws.size()];
        Effect effect = profile.effect(none, true);
        Label label = Label.of(effect.glideMm().median(), effect.glideToLoad());
        return new Loads(
                effect.glideMm(),
                effect.netGlideMm(),
                Weighted.interval(profile.risePct(), draws.weights()),
                effect.glideToLoad(),
                label);
    }
}
