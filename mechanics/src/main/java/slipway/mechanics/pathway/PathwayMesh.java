package slipway.mechanics.pathway;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipway.mechanics.body.Limb;
import slipway.mechanics.cable.CableTree;
import slipway.mechanics.nerve.Tract;

/**
 * The whole pathway of one body as a mesh: the cord and both legs.
 *
 * @param tree nodes and edges
 * @param edgeBranch branch of the edge of each node
 * @param edgeMiddleM arc length of the middle of the edge of each node, m
 * @param arms the edges that each joint lengthens
 * @param paths the paths of the tracts by limb
 */
record PathwayMesh(
        CableTree tree,
        List<Branch> edgeBranch,
        double[] edgeMiddleM,
        List<BedArm> arms,
        Map<Limb, EnumMap<Tract, NervePath>> paths) {
    Set<Tract> tracts() {
        var own = paths.get(Limb.OWN);
        return own == null ? Set.of() : own.keySet();
    }

    NervePath path(Tract tract, Limb limb) {
        var byTract = paths.get(limb);
        NervePath path = byTract == null ? null : byTract.get(tract);
        if (path == null) {
            throw new IllegalStateException("no path for " + tract.key());
        }
        return path;
    }
}
