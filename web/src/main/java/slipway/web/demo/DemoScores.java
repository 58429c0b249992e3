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
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import slipway.care.record.Act;
import slipway.care.record.chart.Chart;
import tools.jackson.databind.json.JsonMapper;

/** Scores of invented people, from the tables beside this class. */
final class DemoScores {
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get();

    private DemoScores() {}

    /** The rows of a table. */
    static List<CSVRecord> rows(String file) {
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(DemoScores.class.getResourceAsStream(file), file), StandardCharsets.UTF_8)) {
            return FORMAT.parse(reader).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }

    /** Scores of a measure in a cell. */
    static int[] of(CSVRecord row, String measure) {
        return Arrays.stream(row.get(measure).split(" ", -1))
                .mapToInt(Integer::parseInt)
                .toArray();
    }

    /** Times from the first to the last, evenly spread. */
    static List<Instant> spread(Instant first, Instant last, int count) {
        Duration whole = Duration.between(first, last);
        return IntStream.range(0, count)
                .mapToObj(i -> i == 0 ? first : first.plus(whole.multipliedBy(i).dividedBy(count - 1)))
                .toList();
    }

    static void add(Chart chart, String measure, Instant at, int total) {
        chart.measures()
                .add(
                        measure,
                        LocalDate.ofInstant(at, ZoneOffset.UTC),
                        JsonMapper.shared().createObjectNode().put("total", total));
    }

    /** The moment some days before now. */
    static Instant ago(Act now, String days) {
        return now.at().minus(Duration.ofDays(Long.parseLong(days))).minus(Duration.ofHours(1));
    }
}
