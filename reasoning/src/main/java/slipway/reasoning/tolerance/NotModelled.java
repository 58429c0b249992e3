package slipway.reasoning.tolerance;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import slipway.reasoning.basis.Reason;

/** Says how much of the suspicion lies on places that the nerve model does not know. */
final class NotModelled {
    private NotModelled() {}

    static List<Reason> reasons(NeuralFindings findings) {
        double share = 1 - findings.modelledShare();
        if (!(share > 0)) {
            return List.of();
        }
        String names = findings.sites().stream()
                .filter(site -> site.site().isEmpty())
                .map(SuspectedSite::name)
                .collect(Collectors.joining(", "));
        boolean all = findings.sites().stream().noneMatch(site -> site.site().isPresent());
        String text = all
                ? "The nerve model knows none of the suspected places (%s): it gives no tolerance.".formatted(names)
                : String.format(
                        Locale.ROOT,
                        "%.0f %% of the suspicion lies on places outside the nerve model (%s): its numbers count that much less.",
                        100 * share,
                        names);
        return List.of(Reason.finding("tolerance.not-modelled", text).with("not modelled", share, "probability"));
    }
}
