package slipway.web.demo;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.person.PersonDetails;
import slipway.mechanics.body.Side;
import tools.jackson.databind.json.JsonMapper;

/** Invented people whose care has ended, so that the figures of the caseload have something to tell. */
final class DemoMeasured {
    private static final List<String> MEASURES = List.of("pain", "lefs");
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get();

    private final Records records;
    private final Map<String, Act> actors;

    /** With who records for whom, each at the moment of now. */
    DemoMeasured(Records records, Map<String, Act> actors) {
        this.records = records;
        this.actors = Map.copyOf(actors);
    }

    void fill() {
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(DemoMeasured.class.getResourceAsStream("measured.csv")),
                StandardCharsets.UTF_8)) {
            FORMAT.parse(reader).forEach(this::person);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read measured.csv", e);
        }
    }

    private void person(CSVRecord row) {
        Act now = Objects.requireNonNull(actors.get(row.get("whose")), row.get("whose"));
        Instant began = ago(now, row.get("began"));
        Instant ended = ago(now, row.get("ended"));
        String person = records.people()
                .add(PersonDetails.invented(row.get("name")), now.at(began))
                .id();
        String episode = records.charts()
                .begin(person, Side.RIGHT, now.userId(), Map.of(), now.at(began))
                .episode()
                .id();
        for (String measure : MEASURES) {
            String[] scores = row.get(measure).split(" ", -1);
            for (int i = 0; i < scores.length; i++) {
                Instant at = began.plus(
                        Duration.between(began, ended).multipliedBy(i).dividedBy(scores.length - 1));
                score(chart(episode, now.at(at)), measure, at, Integer.parseInt(scores[i]));
            }
        }
        Chart last = chart(episode, now.at(ended));
        last.change(last.episode().version(), Side.RIGHT, now.userId(), EpisodeState.CLOSED);
    }

    private static void score(Chart chart, String measure, Instant at, int total) {
        chart.measures()
                .add(
                        measure,
                        LocalDate.ofInstant(at, ZoneOffset.UTC),
                        JsonMapper.shared().createObjectNode().put("total", total));
    }

    private Chart chart(String episode, Act act) {
        return records.charts().open(episode, act).chartIfOpen().orElseThrow();
    }

    private static Instant ago(Act now, String days) {
        return now.at().minus(Duration.ofDays(Long.parseLong(days))).minus(Duration.ofHours(1));
    }
}
