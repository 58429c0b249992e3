package slipway.web.episode.recorded;

import java.util.List;
import slipway.care.record.chart.Chart;
import slipway.web.shell.Times;

/** One thing that is recorded, for a plain list. */
public record RecordedRow(String when, String what) {
    static List<RecordedRow> papers(Chart chart) {
        return chart.papers().list().stream()
                .map(each -> new RecordedRow(Times.minute(each.changedAt()), each.kind()))
                .toList();
    }
}
