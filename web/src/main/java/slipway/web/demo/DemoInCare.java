package slipway.web.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVRecord;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.caseload.TodayRow;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.VisitRecord;
import slipway.care.record.content.Section;

/** Some weeks of care, visit by visit, of invented people who are still in care: half of them move, half stand still. */
final class DemoInCare {
    private static final List<String> MEASURES = List.of("pain", "lefs", "slr");
    private static final int MOST_PEOPLE = 200;
    private static final int WORST = 1;
    private static final int SETTLE_MINUTES = 2;

    private final Records records;
    private final DemoCourse course;
    private final Map<String, Act> actors;
    private final Act ofClinic;

    /** With who records for whom, each at the moment of now, and one of them who reaches everybody of the demo. */
    DemoInCare(Records records, DemoCourse course, Map<String, Act> actors, Act ofClinic) {
        this.ofClinic = ofClinic;
        this.records = records;
        this.course = course;
        this.actors = Map.copyOf(actors);
    }

    void fill() {
        for (CSVRecord row : DemoScores.rows("in-care.csv")) {
            Act now = Objects.requireNonNull(actors.get(row.get("whose")), row.get("whose"));
            if (row.get("story").isEmpty()) {
                scores(episodeOf(row.get("name")), row, now);
            } else {
                person(row, now);
            }
        }
    }

    private String episodeOf(String name) {
        return records.caseload().today(MOST_PEOPLE, ofClinic).stream()
                .filter(row -> row.name().equals(name))
                .map(TodayRow::episodeId)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nobody of the demo in care is called " + name));
    }

    private void person(CSVRecord row, Act now) {
        Act first = now.at(DemoScores.ago(now, row.get("began")));
        DemoCase story = DemoCase.read(row.get("story"), LocalDate.ofInstant(first.at(), ZoneOffset.UTC))
                .as(row.get("name"));
        String person = records.people().add(story.person(), first).id();
        String episode = records.charts()
                .begin(person, story.split().side(), first.userId(), story.until(Section.CHOICES), first)
                .episode()
                .id();
        course.releaseLike(chart(episodeOf(row.get("like")), ofClinic), episode, first);
        reports(episode, row, now);
        scores(episode, row, now);
    }

    /** The scores of each visit; the first visit is there already. */
    private void scores(String episode, CSVRecord row, Act now) {
        List<Instant> times = times(row, now);
        for (int i = 0; i < times.size(); i++) {
            Chart chart = chart(episode, now.at(times.get(i)));
            if (i > 0) {
                VisitRecord seen = chart.visits().start();
                chart.visits().end(seen.id(), seen.version());
            }
            for (String measure : MEASURES) {
                DemoScores.add(chart, measure, times.get(i), DemoScores.of(row, measure)[i]);
            }
        }
    }

    /** Reports by phone between the visits: a session within the plan stirs up little, and that soon settles. */
    private void reports(String episode, CSVRecord row, Act now) {
        String exercise = course.firstAtHome(episode, now);
        Duration step = Duration.ofDays(Long.parseLong(row.get("every")));
        // A few hours away from the visits, which are a whole number of days before now.
        Instant first = DemoScores.ago(now, row.get("began")).plus(step).plus(Duration.ofHours(7));
        for (Instant at = first; at.isBefore(now.at()); at = at.plus(step)) {
            course.report(episode, exercise, now.at(at), WORST, SETTLE_MINUTES);
        }
    }

    private static List<Instant> times(CSVRecord row, Act now) {
        return DemoScores.spread(
                DemoScores.ago(now, row.get("began")),
                DemoScores.ago(now, row.get("latest")),
                DemoScores.of(row, MEASURES.get(0)).length);
    }

    private Chart chart(String episode, Act act) {
        return records.charts().open(episode, act).chartIfOpen().orElseThrow();
    }
}
