package slipway.mechanics.pathway;

import java.util.Arrays;

/** The slides of a block of draws in one posture. In the reference posture at first, where they are 0. */
final class Footing {
    /** Of the joints that count, rad. */
    private final double[] angles;

    /** {@code [node][lane]}, m. */
    final double[][] slideM;

    Footing(int joints, int nodes, int lanes) {
        angles = new double[joints];
        slideM = new double[nodes][lanes];
    }

    void reset() {
        Arrays.fill(angles, 0);
        for (double[] row : slideM) {
            Arrays.fill(row, 0);
        }
    }

    void copy(Footing other) {
        standAt(other.angles);
        for (int i = 0; i < slideM.length; i++) {
            System.arraycopy(other.slideM[i], 0, slideM[i], 0, slideM[i].length);
        }
    }

    void standAt(double[] newAngles) {
        System.arraycopy(newAngles, 0, angles, 0, angles.length);
    }

    /** The move from here to these angles, joint by joint. */
    double[] moveTo(double[] next) {
        double[] move = new double[angles.length];
        Arrays.setAll(move, j -> next[j] - angles[j]);
        return move;
    }

    double[] moveTo(Footing next) {
        return moveTo(next.angles);
    }
}
