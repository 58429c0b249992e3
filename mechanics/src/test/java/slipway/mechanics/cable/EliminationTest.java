package slipway.mechanics.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EliminationTest {
    private static final CableTree FORK = new CableTree(new int[] {-1, 0, 1, 1}, new double[] {0, 0.1, 0.2, 0.1});
    private static final double[][] BED = {{0, 0}, {0.03, 0.01}, {0.05, -0.02}, {0, 0.04}};

    private static Elimination fork() {
        var tissue = new Tissue(
                new double[][] {{1, 1}, {1, 2}, {0.5, 1}, {1, 0.7}},
                new double[][] {{1, 2}, {1, 1}, {3, 1}, {1, 0.5}},
                new double[] {0.03, 0.02},
                new double[] {0.04, 0.02},
                new double[] {0.2, 0.1});
        return new Elimination(FORK, tissue, new Toe(tissue));
    }

    /** The next step is prepared before it is known that the last one went too far. */
    @Test
    void partOfAStepIsTakenBackThoughTheNextOneIsPrepared() {
        Elimination elimination = fork();
        double[][] w = {{0.001, 0.002}, {0.003, 0}, {-0.004, 0.001}, {0, 0.002}};
        double[][] before = copy(w);
        elimination.eliminate(BED, w, new double[2]);
        elimination.takeStep(w, new double[2]);
        double[][] whole = copy(w);

        elimination.eliminate(BED, w, new double[2]);
        elimination.takeBack(w, 1, 0.75);

        for (int i = 0; i < w.length; i++) {
            assertThat(w[i][0]).isEqualTo(whole[i][0]);
            assertThat(w[i][1]).isCloseTo(before[i][1] + 0.25 * (whole[i][1] - before[i][1]), within(1e-15));
            assertThat(whole[i][1]).isNotCloseTo(before[i][1], within(1e-6));
        }
    }

    private static double[][] copy(double[][] rows) {
        double[][] copy = new double[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            copy[i] = rows[i].clone();
        }
        return copy;
    }
}
