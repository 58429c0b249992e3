package slipway.reasoning.response.propose;

import java.util.List;
import slipway.reasoning.response.calibration.Forecast;
import slipway.reasoning.response.calibration.Weeks;

/**
 * What a log comes to.
 *
 * @param results one for each check-in, in the order in which they were received
 * @param forecasts what was predicted after each, where there is an estimate and nothing was stopped
 */
public record Followed(List<RespondResult> results, List<Forecast> forecasts, PersonState state) {
    public Followed {
        results = List.copyOf(results);
        forecasts = List.copyOf(forecasts);
    }

    /** The weeks that the predictions can be held against. */
    public Weeks weeks() {
        return Weeks.of(forecasts, state.courses().values());
    }
}
