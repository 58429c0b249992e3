package slipway.reasoning.screening;

import java.util.Optional;

/**
 * A rule that matched.
 *
 * @param rule the rule
 * @param because what made it match, in words: the answer, the findings with their places, the score
 * @param clearance the clinician's record that it no longer stands in the way
 */
public record Match(ScreeningRule rule, String because, Optional<Clearance> clearance) {
    /** Whether it still raises its level. */
    public boolean stands() {
        return clearance.isEmpty();
    }
}
