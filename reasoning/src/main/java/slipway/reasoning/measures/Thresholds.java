package slipway.reasoning.measures;

import java.util.Map;
import java.util.Optional;
import slipway.reasoning.basis.Coefficient;

/** What is published on the error and the importance of a measure's change; what is not known is absent. */
public final class Thresholds {
    private final Map<String, Coefficient> byQuantity;

    Thresholds(Map<String, Coefficient> byQuantity) {
        this.byQuantity = Map.copyOf(byQuantity);
    }

    /** Minimal detectable change: less may be error. */
    public Optional<Coefficient> mdc() {
        return find("mdc");
    }

    /** Minimal important change, points. */
    public Optional<Coefficient> mcid() {
        return find("mcid");
    }

    /** Minimal important change as a share of the start. */
    public Optional<Coefficient> mcidShare() {
        return find("mcid-share");
    }

    /** A score at least this good counts as recovered. */
    public Optional<Coefficient> recovered() {
        return find("recovered");
    }

    /** A start at this score, or a better one, cannot show improvement. */
    Optional<Coefficient> noBetterFrom() {
        return find("no-better-from");
    }

    /** A start at this score, or a worse one, cannot show worsening. */
    Optional<Coefficient> noWorseFrom() {
        return find("no-worse-from");
    }

    private Optional<Coefficient> find(String quantity) {
        return Optional.ofNullable(byQuantity.get(quantity));
    }
}
