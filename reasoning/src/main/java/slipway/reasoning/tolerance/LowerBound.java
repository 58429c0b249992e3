package slipway.reasoning.tolerance;

/** A load that this person bore without the symptom, in every draw, the error of its reading included. */
final class LowerBound {
    private final String id;
    private final double[] loadPct;

    private LowerBound(String id, double[] loadPct) {
        this.id = id;
        this.loadPct = loadPct;
    }

    static LowerBound of(ComfortablePosition position, LoadDraws loads) {
        return new LowerBound(position.name(), loads.loadPct(position.posture()));
    }

    /** A negative test: its angle was read with error too. */
    static LowerBound of(NeuralTest test, LoadDraws loads) {
        TestLoad load = TestLoad.of(test, loads);
        double[] uniform = loads.draws().column("negative " + test.id());
        double[] reached = new double[uniform.length];
        for (int i = 0; i < reached.length; i++) {
            reached[i] = load.centrePct(i) + load.errorPct(i) * Gauss.quantile(uniform[i]);
        }
        return new LowerBound(test.id(), reached);
    }

    String id() {
        return id;
    }

    double loadPct(int i) {
        return loadPct[i];
    }
}
