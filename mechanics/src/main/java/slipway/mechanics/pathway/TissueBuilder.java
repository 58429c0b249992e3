package slipway.mechanics.pathway;

import java.util.List;
import slipway.mechanics.cable.CableTree;
import slipway.mechanics.cable.Tissue;
import slipway.mechanics.nerve.Segment;
import slipway.mechanics.parameters.ModelParameter;
import slipway.mechanics.parameters.ParameterVector;

/** Spreads parameter vectors over the mesh: stiffness of every edge, hold of every node. */
final class TissueBuilder {
    private final Geometry geometry;
    private final PathwayMesh mesh;

    TissueBuilder(Geometry geometry, PathwayMesh mesh) {
        this.geometry = geometry;
        this.mesh = mesh;
    }

    /** One lane per parameter vector. */
    Tissue build(List<ParameterVector> lanes) {
        CableTree tree = mesh.tree();
        double[][] stiffness = new double[tree.nodes()][lanes.size()];
        double[][] hold = new double[tree.nodes()][lanes.size()];
        for (int edge = 1; edge < tree.nodes(); edge++) {
            double halfM = 0.5 * tree.edgeLengthM(edge);
            Branch branch = mesh.edgeBranch().get(edge);
            double arc = mesh.edgeMiddleM()[edge];
            Segment segment = geometry.segmentAt(arc);
            double logArea = geometry.logAreaRatio(branch, arc);
            double logAreaInMain = geometry.logAreaRatio(mainBranch(branch), arc);
            for (int l = 0; l < lanes.size(); l++) {
                ParameterVector p = lanes.get(l);
                double taper = p.get(ModelParameter.TAPER);
                stiffness[edge][l] = Math.exp(taper * logArea) * centralFactor(segment, p);
                // A side branch is held in proportion to its stiffness, so that the reach of a pull is that of the
                // main nerve beside it (assumption).
                double held = coupling(segment, p) * Math.exp(taper * (logArea - logAreaInMain)) * halfM;
                hold[edge][l] += held;
                hold[tree.parent(edge)][l] += held;
            }
        }
        addEndSprings(lanes, hold);
        addNotchTether(lanes, hold);
        return new Tissue(
                stiffness,
                hold,
                each(lanes, ModelParameter.TOE_MIDPOINT),
                each(lanes, ModelParameter.TOE_WIDTH),
                each(lanes, ModelParameter.SLACK_SLOPE));
    }

    private void addEndSprings(List<ParameterVector> lanes, double[][] hold) {
        CableTree tree = mesh.tree();
        for (int node = 0; node < tree.nodes(); node++) {
            boolean leaf = tree.isLeaf(node);
            for (int l = 0; l < lanes.size(); l++) {
                if (node == 0) {
                    hold[node][l] += lanes.get(l).get(ModelParameter.CORD_SPRING);
                } else if (leaf) {
                    hold[node][l] += lanes.get(l).get(ModelParameter.END_SPRING);
                }
            }
        }
    }

    /** The tissue that holds the nerve where it leaves the pelvis: at the node of each leg that the mesh has there. */
    private void addNotchTether(List<ParameterVector> lanes, double[][] hold) {
        CableTree tree = mesh.tree();
        double notchM = geometry.notchM();
        for (int node = 1; node < tree.nodes(); node++) {
            double arcM = mesh.edgeMiddleM()[node] + 0.5 * tree.edgeLengthM(node);
            if (mesh.edgeBranch().get(node) == Branch.TRUNK && Math.abs(arcM - notchM) < MeshBuilder.SAME_PLACE_M) {
                for (int l = 0; l < lanes.size(); l++) {
                    hold[node][l] += lanes.get(l).get(ModelParameter.NOTCH_TETHER);
                }
            }
        }
    }

    private static Branch mainBranch(Branch branch) {
        return switch (branch) {
            case CORD, TRUNK, FEMORAL -> branch;
            case QUADRICEPS, SAPHENOUS -> Branch.FEMORAL;
            default -> Branch.TIBIAL;
        };
    }

    private static double centralFactor(Segment segment, ParameterVector p) {
        return switch (segment) {
            case CORD -> p.get(ModelParameter.CORD_STIFFNESS);
            case CANAL -> p.get(ModelParameter.ROOT_STIFFNESS);
            default -> 1;
        };
    }

    private static double coupling(Segment segment, ParameterVector p) {
        return p.get(
                switch (segment) {
                    case CORD -> ModelParameter.COUPLING_CORD;
                    case CANAL -> ModelParameter.COUPLING_CANAL;
                    case PELVIS -> ModelParameter.COUPLING_PELVIS;
                    case THIGH -> ModelParameter.COUPLING_THIGH;
                    case SHANK -> ModelParameter.COUPLING_SHANK;
                    case FOOT -> ModelParameter.COUPLING_FOOT;
                });
    }

    private static double[] each(List<ParameterVector> lanes, ModelParameter parameter) {
        return lanes.stream().mapToDouble(p -> p.get(parameter)).toArray();
    }
}
