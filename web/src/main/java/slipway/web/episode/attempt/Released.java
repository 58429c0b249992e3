package slipway.web.episode.attempt;

import java.util.List;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanVersion;

/** What of a plan went home. */
public final class Released {
    private Released() {}

    /** Ids of the exercises of a plan whose newest try released them. */
    public static List<String> ids(Chart chart, PlanVersion plan) {
        return TryStep.released(chart, plan);
    }
}
