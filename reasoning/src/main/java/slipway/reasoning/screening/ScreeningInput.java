package slipway.reasoning.screening;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slipway.reasoning.findings.Finding;

/**
 * What the screening looks at.
 *
 * @param region the limb in question
 * @param answers by question id; what is not in it was not asked
 * @param clearances recorded by clinicians
 * @param findings of the examination, from which signs are read
 * @param ageYears age, if known
 * @param wells answers to the thrombosis score, if it was looked at
 */
public record ScreeningInput(
        Region region,
        Map<String, Answer> answers,
        List<Clearance> clearances,
        List<Finding> findings,
        OptionalInt ageYears,
        Optional<Wells.Answers> wells) {
    public ScreeningInput {
        answers = Map.copyOf(answers);
        clearances = List.copyOf(clearances);
        findings = List.copyOf(findings);
    }

    /** Answers alone, without examination. */
    public static ScreeningInput of(Region region, Map<String, Answer> answers) {
        return new ScreeningInput(region, answers, List.of(), List.of(), OptionalInt.empty(), Optional.empty());
    }
}
