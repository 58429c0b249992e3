package slipway.reasoning.screening;

import java.time.LocalDate;

/**
 * A clinician's record that a matched rule was assessed and no longer stands in the way.
 *
 * @param rule id of the rule
 * @param who role or id of the clinician, never empty
 * @param when date of the assessment
 * @param outcome what was found, never empty
 */
public record Clearance(String rule, String who, LocalDate when, String outcome) {
    public Clearance {
        if (rule.isBlank() || who.isBlank() || outcome.isBlank()) {
            throw new IllegalArgumentException("a clearance needs rule, who and outcome");
        }
    }
}
