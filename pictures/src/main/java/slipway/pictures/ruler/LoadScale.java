package slipway.pictures.ruler;

import java.util.List;
import java.util.Optional;

/**
 * What the load ruler shows. All loads in one unit, above the load of the rest posture.
 *
 * @param unit what the numbers are, for example {@code % strain}
 * @param tolerance how sure the tolerance is; empty if nothing is known yet
 * @param aimed the load that exercises aim to stay under, if there is one
 * @param tests where clinical tests began to hurt
 * @param exercises how far exercises load
 */
public record LoadScale(
        String unit, Optional<Tolerance> tolerance, Optional<Aim> aimed, List<Test> tests, List<Bar> exercises) {

    /** Quantiles of the tolerance: 10, 25, 50, 75, 90 %. */
    public record Tolerance(double p10, double p25, double p50, double p75, double p90) {
        public Tolerance {
            if (!(p10 <= p25 && p25 <= p50 && p50 <= p75 && p75 <= p90) || !Double.isFinite(p10 + p90)) {
                throw new IllegalArgumentException("quantiles of a tolerance must rise, were %s, %s, %s, %s, %s"
                        .formatted(p10, p25, p50, p75, p90));
            }
        }
    }

    /** A load with its name, for example {@code 60 % of tolerance}. */
    public record Aim(double load, String label) {
        public Aim {
            checked(load, label);
        }
    }

    /** The load at which symptoms began in a test. */
    public record Test(double load, String label) {
        public Test {
            checked(load, label);
        }
    }

    /**
     * An exercise from its lowest to its highest load.
     *
     * @param upper high end of the interval of its highest load: how sure it is
     */
    public record Bar(double low, double high, double upper, String label) {
        public Bar {
            checked(low, label);
            checked(upper, label);
            if (!(low <= high && high <= upper)) {
                throw new IllegalArgumentException(
                        "the loads of \"%s\" must rise from low over high to upper, were %s, %s, %s"
                                .formatted(label, low, high, upper));
            }
        }
    }

    public LoadScale {
        tests = List.copyOf(tests);
        exercises = List.copyOf(exercises);
    }

    private static void checked(double load, String label) {
        if (!Double.isFinite(load) || label.isBlank()) {
            throw new IllegalArgumentException(
                    "a load needs a number and a label, was %s \"%s\"".formatted(load, label));
        }
    }

    /** The largest load on the ruler; at least a little above 0. */
    double largest() {
        double largest = tolerance.map(Tolerance::p90).orElse(0.0);
        largest = Math.max(largest, aimed.map(Aim::load).orElse(0.0));
        largest = Math.max(largest, tests.stream().mapToDouble(Test::load).max().orElse(0));
        return Math.max(
                1e-6,
                Math.max(
                        largest,
                        exercises.stream().mapToDouble(Bar::upper).max().orElse(0)));
    }

    /** The smallest load on the ruler, 0 or less. */
    double smallest() {
        double bars = exercises.stream().mapToDouble(Bar::low).min().orElse(0);
        return Math.min(0, Math.min(bars, tolerance.map(Tolerance::p10).orElse(0.0)));
    }
}
