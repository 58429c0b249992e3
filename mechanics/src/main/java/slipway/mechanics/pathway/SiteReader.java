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

/** Reads the values at the sites from a solved block. Where a site lies in each draw is looked up once. */
final class SiteReader {
    private static final double MM_PER_M = 1000;

    private final PathwayMesh mesh;
    private final int draws;
    private final Map<Site, Places> places = new LinkedHashMap<>();

    /** Where one site lies in each draw. */
    private record Places(NervePath.Between[] edges, NervePath.Between[] nodes) {}

    SiteReader(Geometry geometry, PathwayMesh mesh, DrawSet draws, Collection<Site> sites) {
        this.mesh = mesh;
        this.draws = draws.size();
        for (Site site : sites) {
            NervePath path = mesh.path(site.tract(), Limb.OWN);
            double[] arcs = draws.sitePositions(site);
            var edges = new NervePath.Between[arcs.length];
            var nodes = new NervePath.Between[arcs.length];
            for (int d = 0; d < arcs.length; d++) {
                double arcM = geometry.arcM(site.segment(), arcs[d]);
                edges[d] = path.edgesAround(arcM);
                nodes[d] = path.nodesAround(arcM);
            }
            places.put(site, new Places(edges, nodes));
        }
    }

    SiteValues newValues() {
        var strain = new HashMap<Site, double[]>();
        var glide = new HashMap<Site, double[]>();
        for (Site site : places.keySet()) {
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
        places.forEach((site, at) -> {
            double[] strain = into.strainRow(site);
            double[] glide = into.glideMmRow(site);
            for (int l = 0; l < block.lanes(); l++) {
                strain[firstDraw + l] = at.edges()[firstDraw + l].value(block.strain(), l);
                glide[firstDraw + l] = MM_PER_M * at.nodes()[firstDraw + l].value(block.slideM(), l);
            }
        });
        double[] mean = new double[block.lanes()];
        for (Tract tract : mesh.tracts()) {
            mesh.path(tract, Limb.OWN).meanPositiveStrain(block.strain(), mean);
            System.arraycopy(mean, 0, into.meanPositiveStrainRow(tract), firstDraw, mean.length);
        }
    }
}
