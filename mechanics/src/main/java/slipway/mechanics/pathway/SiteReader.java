package slipway.mechanics.pathway;

import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import slipway.mechanics.body.Limb;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.DrawSet;

/** Reads the values at the sites from a solved block. */
final class SiteReader {
    private final PathwayMesh mesh;
    private final int draws;
    private final Map<Site, double[]> arcM = new LinkedHashMap<>();

    SiteReader(Geometry geometry, PathwayMesh mesh, DrawSet draws, Collection<Site> sites) {
        this.mesh = mesh;
        this.draws = draws.size();
        for (Site site : sites) {
            double[] arcs = draws.sitePositions(site);
            for (int d = 0; d < arcs.length; d++) {
                arcs[d] = geometry.arcM(site.segment(), arcs[d]);
            }
            arcM.put(site, arcs);
        }
    }

    SiteValues newValues() {
        var strain = new HashMap<Site, double[]>();
        var glide = new HashMap<Site, double[]>();
        for (Site site : arcM.keySet()) {
            strain.put(site, new double[draws]);
            glide.put(site, new double[draws]);
        }
        var mean = new EnumMap<Tract, double[]>(Tract.class);
        for (Tract tract : mesh.tracts()) {
            mean.put(tract, new double[draws]);
        }
        return new SiteValues(strain, glide, mean);
    }

    void read(LaneBlock block, int firstDraw, SiteValues into) {
        arcM.forEach((site, arcs) -> {
            NervePath path = mesh.path(site.tract(), Limb.OWN);
            double[] strain = into.strainRow(site);
            double[] glide = into.glideMmRow(site);
            for (int l = 0; l < block.lanes(); l++) {
                int draw = firstDraw + l;
                strain[draw] = path.strainAt(arcs[draw], block.strain(), l);
                glide[draw] = 1000 * path.slideAt(arcs[draw], block.slideM(), l);
            }
        });
        for (Tract tract : mesh.tracts()) {
            NervePath path = mesh.path(tract, Limb.OWN);
            double[] mean = into.meanPositiveStrainRow(tract);
            for (int l = 0; l < block.lanes(); l++) {
                mean[firstDraw + l] = path.meanPositiveStrain(block.strain(), l);
            }
        }
    }
}
