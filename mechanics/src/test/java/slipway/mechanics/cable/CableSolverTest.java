package slipway.mechanics.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CableSolverTest {
    private static final CableTree TWO = new CableTree(new int[] {-1, 0}, new double[] {0, 0.1});

    private static Tissue tissue(double hold) {
        return new Tissue(
                new double[][] {{1}, {1}},
                new double[][] {{hold}, {hold}},
                new double[] {0.03},
                new double[] {0.04},
                new double[] {0.2});
    }

    @Test
    void stateWithoutElongationIsTheReference() {
        double[][] slide = {{0.3}, {-0.2}};
        new CableSolver(TWO, tissue(1)).solve(new double[2][1], slide);
        assertThat(Math.abs(slide[0][0])).isLessThan(1e-10);
        assertThat(Math.abs(slide[1][0])).isLessThan(1e-10);
    }

    @Test
    void unsolvableInputIsAnErrorThatNamesTheStepsAndWhatWasSolved() {
        var solver = new CableSolver(TWO, tissue(1));
        assertThatThrownBy(() -> solver.solve(new double[][] {{0}, {Double.NaN}}, new double[2][1]))
                .isInstanceOfSatisfying(NonConvergenceException.class, e -> {
                    assertThat(e.iterations()).isEqualTo(CableSolver.MAX_STEPS);
                    assertThat(e.residualM()).isInfinite();
                    assertThat(e.in("posture \"hip 60\"")).hasMessageContaining("posture \"hip 60\"");
                });
    }

    @Test
    void refusesWhatCannotBeATree() {
        assertThatThrownBy(() -> new CableTree(new int[] {-1, 2, 1}, new double[] {0, 1, 1}))
                .hasMessageContaining("node 1");
        assertThatThrownBy(() -> new CableTree(new int[] {-1, 0}, new double[] {0, Double.NaN}))
                .hasMessageContaining("edge length");
        assertThatThrownBy(() -> new CableSolver(TWO, tissue(-1))).hasMessageContaining("hold not negative");
    }
}
