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
    private final CableSolver solver;
    /** Elongation of each edge of an arm per radian, {@code [arm][edge of the arm][lane]}, as a fraction. */
    private final double[][][] perRad;

    private final double[][] bedElongation;
    private final double[][] strain;

    /** What was solved last. */
    private Stance stance;

    LaneBlock(Geometry geometry, PathwayMesh mesh, List<ParameterVector> lanes, double bodyScale) {
        this.mesh = mesh;
        this.lanes = lanes;
        solver = new CableSolver(mesh.tree(), new TissueBuilder(geometry, mesh).build(lanes));
        perRad = perRad(geometry, bodyScale);
        int nodes = mesh.tree().nodes();
        bedElongation = new double[nodes][lanes.size()];
        stance = new Stance(mesh.arms(), nodes, lanes.size());
        strain = new double[nodes][lanes.size()];
    }

    int lanes() {
        return lanes.size();
    }

    /** A place to stand for somebody who goes through postures one by one. */
    Stance newStance() {
        return new Stance(mesh.arms(), mesh.tree().nodes(), lanes.size());
    }

    /** Solves one posture from where the stance is; what is read afterwards is that of this posture. */
    void solve(Posture posture, Stance from) {
        stance = from;
        bedElongation(posture);
        stance.guess(posture);
        try {
            solver.solve(bedElongation, stance.slideM());
        } catch (NonConvergenceException e) {
            stance.reset();
            throw e.in("posture \"" + posture + "\"");
        }
        solver.strains(bedElongation, stance.slideM(), strain);
    }

    /** Elongation of the bed along each edge in a posture, {@code [node][lane]}; the array is reused. */
    double[][] bedElongation(Posture posture) {
        for (double[] row : bedElongation) {
            Arrays.fill(row, 0);
        }
        for (int a = 0; a < perRad.length; a++) {
            BedArm arm = mesh.arms().get(a);
            double angleRad = Math.toRadians(posture.angleDeg(arm.joint(), arm.limb()));
            if (angleRad != 0) {
                for (int i = 0; i < arm.edges().length; i++) {
                    addTimes(bedElongation[arm.edges()[i]], perRad[a][i], angleRad);
                }
            }
        }
        return bedElongation;
    }

    private static void addTimes(double[] sum, double[] term, double factor) {
        for (int l = 0; l < sum.length; l++) {
            sum[l] += term[l] * factor;
        }
    }

    private double[][][] perRad(Geometry geometry, double bodyScale) {
        double[][][] all = new double[mesh.arms().size()][][];
        for (int a = 0; a < all.length; a++) {
            BedArm arm = mesh.arms().get(a);
            JointBed bed = geometry.bed(arm.joint(), arm.branch());
            all[a] = new double[arm.edges().length][lanes.size()];
            for (int l = 0; l < lanes.size(); l++) {
                double armM = MomentArms.armM(arm, lanes.get(l), bodyScale);
                double[] sharePerM = arm.sharePerM(bed.scaled(MomentArms.zoneFactor(arm.joint(), lanes.get(l))));
                for (int i = 0; i < sharePerM.length; i++) {
                    all[a][i][l] = armM * sharePerM[i];
                }
            }
        }
        return all;
    }

    double[][] slideM() {
        return stance.slideM();
    }

    double[][] strain() {
        return strain;
    }

    double relativeTension(int node, int lane) {
        return solver.relativeTension(node, lane, strain[node][lane]);
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
