package slipway.reasoning.dose;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipway.mechanics.body.Posture;
import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.tolerance.LoadDraws;
import slipway.reasoning.tolerance.TestFamily;

/** What the peak of a movement is held against, in every draw. */
sealed interface LoadLimit {
    /** The limit in percent above rest for a movement through these postures; empty if nothing tells it. */
    Optional<double[]> pct(LoadDraws draws, List<Posture> postures);

    /**
     * A share of the tolerance of every family that the movement passes through, but no less than what the person bears
     * there in comfort: a margin below that would refuse the very position.
     */
    record Share(double fraction) implements LoadLimit {
        @Override
        public Optional<double[]> pct(LoadDraws draws, List<Posture> postures) {
            Set<TestFamily> families = EnumSet.noneOf(TestFamily.class);
            postures.forEach(posture -> families.add(TestFamily.of(posture)));
            double[] limit = new double[draws.size()];
            Arrays.fill(limit, Double.POSITIVE_INFINITY);
            for (TestFamily family : families) {
                Optional<double[]> tolerance = draws.tolerancePct(family);
                if (tolerance.isEmpty()) {
                    return Optional.empty();
                }
                double[] comfort = draws.comfortablePct(family).orElseGet(() -> new double[limit.length]);
                for (int i = 0; i < limit.length; i++) {
                    limit[i] = Math.min(limit[i], Math.max(fraction * tolerance.get()[i], comfort[i]));
                }
            }
            return Optional.of(limit);
        }
    }

    /** The same small load whatever the tolerance: for remote movements with symptoms at rest. */
    record Fixed(Coefficient load) implements LoadLimit {
        @Override
        public Optional<double[]> pct(LoadDraws draws, List<Posture> postures) {
            double[] limit = new double[draws.size()];
            Arrays.fill(limit, load.value());
            return Optional.of(limit);
        }
    }
}
