package slipway.web.told;

import slipway.care.record.chart.Chart;
import slipway.care.record.chart.EpisodeState;

/** Whether the first visit is still ahead. */
public final class FirstVisit {
    private FirstVisit() {}

    /** True until a visit has ended or a plan was given; never of a closed episode. */
    public static boolean isAhead(Chart chart) {
        return chart.episode().state() != EpisodeState.CLOSED
                && chart.plans().released().isEmpty()
                && chart.visits().list().stream()
                        .allMatch(visit -> visit.endedAt().isEmpty());
    }
}
