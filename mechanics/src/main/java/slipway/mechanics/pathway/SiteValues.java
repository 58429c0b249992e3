package slipway.mechanics.pathway;

import java.util.EnumMap;
import java.util.Map;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;

/** The values at all sites and of all tracts in one posture. */
final class SiteValues implements PostureResponse {
    private final Map<Site, double[]> strain;
    private final Map<Site, double[]> glideMm;
    private final EnumMap<Tract, double[]> meanPositiveStrain;

    SiteValues(Map<Site, double[]> strain, Map<Site, double[]> glideMm, EnumMap<Tract, double[]> meanPositiveStrain) {
        this.strain = strain;
        this.glideMm = glideMm;
        this.meanPositiveStrain = meanPositiveStrain;
    }

    @Override
    public double[] strainAt(Site site) {
        return row(strain, site).clone();
    }

    @Override
    public double[] glideMmAt(Site site) {
        return row(glideMm, site).clone();
    }

    @Override
    public double[] meanPositiveStrain(Tract tract) {
        return row(meanPositiveStrain, tract).clone();
    }

    double[] strainRow(Site site) {
        return row(strain, site);
    }

    double[] glideMmRow(Site site) {
        return row(glideMm, site);
    }

    double[] meanPositiveStrainRow(Tract tract) {
        return row(meanPositiveStrain, tract);
    }

    private static <K> double[] row(Map<K, double[]> rows, K key) {
        double[] row = rows.get(key);
        if (row == null) {
            throw new IllegalArgumentException("the nerve model was not asked to follow " + key);
        }
        return row;
    }
}
