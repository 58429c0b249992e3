package slipway.mechanics.cable;

/** The equations were not solved within the allowed number of steps; never a silent wrong answer. */
public final class NonConvergenceException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Newton steps taken. */
    private final int iterations;

    /** Largest remaining change of a slide in the worst lane, m. */
    private final double residualM;

    NonConvergenceException(String what, int iterations, double residualM) {
        super("%s: the nerve model did not converge after %d steps, remaining change %.3g m"
                .formatted(what, iterations, residualM));
        this.iterations = iterations;
        this.residualM = residualM;
    }

    /** Newton steps taken. */
    public int iterations() {
        return iterations;
    }

    /** Largest remaining change of a slide in the worst lane, m. */
    public double residualM() {
        return residualM;
    }

    /** The same failure, saying what was being solved. */
    public NonConvergenceException in(String what) {
        return new NonConvergenceException(what, iterations, residualM);
    }
}
