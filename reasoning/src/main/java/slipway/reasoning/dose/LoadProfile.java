package slipway.reasoning.dose;

import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.tolerance.Interval;
import slipway.reasoning.tolerance.LoadDraws;
import slipway.reasoning.tolerance.Weighted;

/** Peak load and glide travelled along a movement, in every draw; grows posture by posture. */
final class LoadProfile {
    private final LoadDraws draws;
    private final Site site;
    private final Posture start;
    private final double[] weights;
    private final double[] weightsAtSite;
    private final double[] peakPct;
    private final double[] nearestMm;
    private final double[] furthestMm;
    private double[] netMm;

    LoadProfile(LoadDraws draws, Site site, Posture start) {
        this.draws = draws;
        this.site = site;
        this.start = start;
        weights = draws.weights();
        weightsAtSite = draws.weightsAt(site);
        peakPct = draws.loadPct(start).clone();
        nearestMm = new double[peakPct.length];
        furthestMm = new double[peakPct.length];
        netMm = new double[peakPct.length];
    }

    private LoadProfile(LoadProfile other) {
        draws = other.draws;
        site = other.site;
        start = other.start;
        weights = other.weights;
        weightsAtSite = other.weightsAtSite;
        peakPct = other.peakPct.clone();
        nearestMm = other.nearestMm.clone();
        furthestMm = other.furthestMm.clone();
        netMm = other.netMm;
    }

    /** The same movement so far, to go on from on its own. */
    LoadProfile copy() {
        return new LoadProfile(this);
    }

    /** Goes on to the next posture. */
    void add(Posture posture) {
        double[] load = draws.loadPct(posture);
        double[] glide = draws.glideMm(site, start, posture);
        for (int i = 0; i < load.length; i++) {
            peakPct[i] = Math.max(peakPct[i], load[i]);
            nearestMm[i] = Math.min(nearestMm[i], glide[i]);
            furthestMm[i] = Math.max(furthestMm[i], glide[i]);
        }
        netMm = glide;
    }

    /** Chance that the peak so far is above the limit. */
    double probabilityAbove(double[] limitPct) {
        double above = 0;
        for (int i = 0; i < weights.length; i++) {
            if (!(peakPct[i] <= limitPct[i])) {
                above += weights[i];
            }
        }
        return Math.min(1, above);
    }

    /** Median of the glide travelled so far, in mm. */
    double glideMm() {
        return Weighted.quantile(travelMm(), weightsAtSite, 0.5);
    }

    private double[] travelMm() {
        double[] travel = new double[peakPct.length];
        for (int i = 0; i < travel.length; i++) {
            travel[i] = furthestMm[i] - nearestMm[i];
        }
        return travel;
    }

    /** By how much the peak so far is above the load of the start. */
    double[] risePct() {
        double[] atStart = draws.loadPct(start);
        double[] rise = new double[peakPct.length];
        for (int i = 0; i < rise.length; i++) {
            rise[i] = peakPct[i] - atStart[i];
        }
        return rise;
    }

    Effect effect(double[] limitPct, boolean movementShown) {
        double[] travel = travelMm();
        double[] rise = risePct();
        double[] ratio = new double[travel.length];
        for (int i = 0; i < ratio.length; i++) {
            ratio[i] = travel[i] / Math.max(rise[i], DoseData.value("rise-floor"));
        }
        Interval glide = Weighted.interval(travel, weightsAtSite);
        return new Effect(
                glide,
                Weighted.interval(netMm, weightsAtSite),
                Weighted.interval(peakPct, weights),
                Weighted.quantile(limitPct, weights, 0.5),
                probabilityAbove(limitPct),
                Weighted.quantile(ratio, weightsAtSite, 0.5),
                movementShown);
    }
}
