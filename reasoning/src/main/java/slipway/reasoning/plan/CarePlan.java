package slipway.reasoning.plan;

import java.util.List;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.irritability.IrritabilityReport;
import slipway.reasoning.tolerance.ToleranceReport;

/** Everything that plan.json says, each part with its basis. The names of the components are the keys of the file. */
public record CarePlan(
        ScreeningSummary screening,
        List<SiteShare> sites,
        ToleranceReport tolerance,
        IrritabilityReport irritability,
        ExercisePlan plan,
        List<Reason> cautions,
        ModelStamp model) {
    public CarePlan {
        sites = List.copyOf(sites);
        cautions = List.copyOf(cautions);
    }
}
