package slipway.reasoning.tolerance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Reason;

/**
 * Two results of one family that no well-fitting draw can explain together. The lower one counts.
 *
 * @param dropped the one that asks for more tolerance
 * @param kept the one that counts
 * @param standardErrors by how much they disagree
 */
record Conflict(String dropped, String kept, double standardErrors) {

    /** The worst conflict in a fit, if any is beyond the limit. */
    static Optional<Conflict> worst(FamilyFit fit, double[] weights) {
        var found = new ArrayList<Conflict>();
        List<TestLoad> onsets = fit.onsets();
        for (int a = 0; a < onsets.size(); a++) {
            for (int b = a + 1; b < onsets.size(); b++) {
                found.add(between(onsets.get(a), onsets.get(b), weights));
            }
        }
        if (!onsets.isEmpty()) {
            String measured = onsets.stream()
                    .map(TestLoad::id)
                    .reduce((a, b) -> a + " and " + b)
                    .orElse("");
            for (LowerBound bound : fit.bounds()) {
                double z = Weighted.quantile(fit.excess(bound), weights, 0.5);
                found.add(new Conflict(bound.id(), measured, z));
            }
        }
        double limit = ToleranceData.COEFFICIENTS.value("conflict-z");
        return found.stream()
                .filter(conflict -> conflict.standardErrors > limit)
                .max(Comparator.comparingDouble(Conflict::standardErrors));
    }

    private static Conflict between(TestLoad a, TestLoad b, double[] weights) {
        double z = Weighted.quantile(FamilyFit.difference(a, b), weights, 0.5);
        return z >= 0 ? new Conflict(a.id(), b.id(), z) : new Conflict(b.id(), a.id(), -z);
    }

    Reason reason() {
        Coefficient limit = ToleranceData.COEFFICIENTS.get("conflict-z");
        String text = String.format(
                Locale.ROOT,
                "\"%s\" does not fit \"%s\" (%.1f standard errors apart); the one that asks for less counts.",
                dropped,
                kept,
                standardErrors);
        return Reason.by(limit, "tolerance.conflict", text).with("disagreement", standardErrors, "standard errors");
    }
}
