package slipway.reasoning.plan;

import java.util.List;
import slipway.reasoning.irritability.IrritabilityReport;
import slipway.reasoning.tolerance.ToleranceReport;

/**
 * What plan.json says, each part with its basis; format and case id are added where the file is written. The names of the
 * components are the keys of the file.
 *
 * @param cautions sentences that go with the plan, never empty
 */
public record CarePlan(
        ScreeningSummary screening,
        List<SiteShare> sites,
        ToleranceReport tolerance,
        IrritabilityReport irritability,
        ExercisePlan plan,
        List<String> cautions,
        ModelStamp model) {
    public CarePlan {
        sites = List.copyOf(sites);
        cautions = List.copyOf(cautions);
    }
}
