package slipway.web.validity;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.reasoning.response.calibration.Calibration;
import slipway.reasoning.response.calibration.Week;

/**
 * What the records of a clinic come to: sums only, nobody's name.
 *
 * @param people who have or had a plan at home with at least one report on it
 * @param reports that were answered
 * @param fired how often each rule matched, by id; those that never did are left out
 * @param weeks that a prediction can be held against
 * @param leftOut weeks that do not count, see {@link slipway.reasoning.response.calibration.Weeks}
 */
public record Tally(Instant at, int people, int reports, Map<String, Integer> fired, List<Week> weeks, int leftOut) {
    public Tally {
        fired = Map.copyOf(fired);
        weeks = List.copyOf(weeks);
    }

    /** How often a rule matched. */
    public int fired(String rule) {
        return fired.getOrDefault(rule, 0);
    }

    /** Predictions against what came; empty without a week. */
    public Optional<Calibration> calibration() {
        return weeks.isEmpty() ? Optional.empty() : Optional.of(Calibration.of(weeks));
    }
}
