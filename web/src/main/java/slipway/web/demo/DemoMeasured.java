package slipway.web.demo;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVRecord;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.person.PersonDetails;
import slipway.mechanics.body.Side;

/** Invented people whose care has ended, so that the figures of the caseload have something to tell. */
final class DemoMeasured {
    private static final List<String> MEASURES = List.of("pain", "lefs");

    private final Records records;
    private final Map<String, Act> actors;

    /** With who records for whom, each at the moment of now. */
    DemoMeasured(Records records, Map<String, Act> actors) {
        this.records = records;
        this.actors = Map.copyOf(actors);
    }

    void fill() {
        DemoScores.rows("measured.csv").forEach(this::person);
    }

    private void person(CSVRecord row) {
        Act now = Objects.requireNonNull(actors.get(row.get("whose")), row.get("whose"));
        Instant began = DemoScores.ago(now, row.get("began"));
        Instant ended = DemoScores.ago(now, row.get("ended"));
        String person = records.people()
                .add(PersonDetails.invented(row.get("name")), now.at(began))
                .id();
        String episode = records.charts()
                .begin(person, Side.RIGHT, now.userId(), Map.of(), now.at(began))
                .episode()
                .id();
        for (String measure : MEASURES) {
            int[] scores = DemoScores.of(row, measure);
            List<Instant> times = DemoScores.spread(began, ended, scores.length);
            for (int i = 0; i < scores.length; i++) {
                DemoScores.add(chart(episode, now.at(times.get(i))), measure, times.get(i), scores[i]);
            }
        }
        Chart last = chart(episode, now.at(ended));
        last.change(last.episode().version(), Side.RIGHT, now.userId(), EpisodeState.CLOSED);
    }

    private Chart chart(String episode, Act act) {
        return records.charts().open(episode, act).chartIfOpen().orElseThrow();
    }
}
