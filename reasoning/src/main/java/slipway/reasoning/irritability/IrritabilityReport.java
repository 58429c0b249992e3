package slipway.reasoning.irritability;

import java.util.List;
import slipway.reasoning.basis.Reason;

/** The level with its reasons. */
public record IrritabilityReport(Irritability level, List<Reason> reasons) {
    public IrritabilityReport {
        reasons = List.copyOf(reasons);
    }
}
