package slipway.web.today;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slipway.care.record.caseload.TodayRow;
import slipway.care.record.chart.PlanState;
import slipway.documents.words.Words;

/**
 * Somebody who needs something: why in words, and the one thing to do.
 *
 * @param rank 0 first
 * @param address of the page where it is done
 */
public record Need(String episodeId, String name, int rank, String why, String action, String address) {
    /** What the people of a list need, most urgent first; whoever needs nothing is left out. Alerts are no part of it. */
    static List<Need> of(List<TodayRow> rows, Words words) {
        return rows.stream()
                .flatMap(row -> of(row, words).stream())
                .sorted(Comparator.comparingInt(Need::rank))
                .toList();
    }

    private static Optional<Need> of(TodayRow row, Words words) {
        if (row.newestPlan().isEmpty() && row.toldAt().isPresent()) {
            return Optional.of(need(row, 2, "told", "history", words));
        }
        if (row.newestPlan().isEmpty()) {
            return Optional.of(need(row, 2, "noPlan", "", words));
        }
        PlanState state = row.newestPlan().get().state();
        if (state == PlanState.PROPOSED) {
            return Optional.of(need(row, 0, "decide", "plan", words));
        }
        if (state == PlanState.ACCEPTED) {
            return Optional.of(need(row, 1, "try", "try", words));
        }
        // At home: whoever is silent stands in a line of its own.
        return Optional.empty();
    }

    private static Need need(TodayRow row, int rank, String key, String step, Words words) {
        return new Need(
                row.episodeId(),
                row.name(),
                rank,
                words.get("why." + key),
                words.get("do." + key),
                "/episodes/" + row.episodeId() + (step.isEmpty() ? "" : "/" + step));
    }
}
