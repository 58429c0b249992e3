package slipway.mechanics.pathway;

import java.util.Arrays;
import java.util.List;
import slipway.mechanics.body.Posture;
import slipway.mechanics.cable.CableSolver;
import slipway.mechanics.cable.NonConvergenceException;
import slipway.mechanics.parameters.ParameterVector;

/** A few draws that are solved together, with the work space for it. One thread at a time. */
final class LaneBlock {
    private final PathwayMesh mesh;
    private final List<ParameterVector> lanes;
    private final double bodyScale;
    private final CableSolver solver;
    private final double[][] bedElongation;
    private final double[][] slideM;
    private final double[][] strain;

    LaneBlock(Geometry geometry, PathwayMesh mesh, List<ParameterVector> lanes, double bodyScale) {
        this.mesh = mesh;
        this.lanes = lanes;
        this.bodyScale = bodyScale;
        solver = new CableSolver(mesh.tree(), new TissueBuilder(geometry, mesh).build(lanes));
        int nodes = mesh.tree().nodes();
        bedElongation = new double[nodes][lanes.size()];
        slideM = new double[nodes][lanes.size()];
        strain = new double[nodes][lanes.size()];
    }

    int lanes() {
        return lanes.size();
    }

    /** Forgets the last solution, so that the next one does not depend on what was asked before. */
    void reset() {
        for (double[] row : slideM) {
            Arrays.fill(row, 0);
        }
    }

    /** Solves one posture, starting from the last solution. */
    void solve(Posture posture) {
        for (double[] row : bedElongation) {
            Arrays.fill(row, 0);
        }
        for (BedArm arm : mesh.arms()) {
            for (int l = 0; l < lanes.size(); l++) {
                double elongation = MomentArms.elongationM(arm, posture, lanes.get(l), bodyScale);
                if (elongation != 0) {
                    addElongation(arm, elongation, l);
                }
            }
        }
        try {
            solver.solve(bedElongation, slideM);
        } catch (NonConvergenceException e) {
            reset();
            throw e.in("posture \"" + posture + "\"");
        }
        solver.strains(bedElongation, slideM, strain);
    }

    private void addElongation(BedArm arm, double elongationM, int lane) {
        int[] edges = arm.edges();
        for (int i = 0; i < edges.length; i++) {
            bedElongation[edges[i]][lane] += elongationM * arm.sharePerM()[i];
        }
    }

    double[][] slideM() {
        return slideM;
    }

    double[][] strain() {
        return strain;
    }

    double relativeTension(int node, int lane) {
        return solver.relativeTension(node, lane);
    }

    double bedElongationM(NervePath path, int lane) {
        return lengthened(path, bedElongation, lane);
    }

    double nerveElongationM(NervePath path, int lane) {
        return lengthened(path, strain, lane);
    }

    private double lengthened(NervePath path, double[][] fraction, int lane) {
        double sum = 0;
        for (int cell = 1; cell < path.nodes().length; cell++) {
            int node = path.nodes()[cell];
            sum += fraction[node][lane] * mesh.tree().edgeLengthM(node);
        }
        return sum;
    }
}
