package slipway.care.casefile;

import java.util.List;
import java.util.OptionalDouble;
import slipway.mechanics.body.Position;
import slipway.reasoning.findings.Finding;

/**
 * What the examination found.
 *
 * @param comfortable positions in which symptoms stay at their usual level
 * @param rest the position with the least symptoms; lying with bent knees unless stated
 * @param findings neurological findings of both sides, in the order of the file
 */
public record Examination(
        IrritabilityReport irritability,
        RangesOfMotion ranges,
        List<TestEntry> tests,
        List<PressureLimit> pressureLimits,
        OptionalDouble sittingMinutes,
        List<Position> comfortable,
        Position rest,
        List<Finding> findings,
        SpineFindings spine) {
    public Examination {
        tests = List.copyOf(tests);
        pressureLimits = List.copyOf(pressureLimits);
        comfortable = List.copyOf(comfortable);
        findings = List.copyOf(findings);
    }
}
