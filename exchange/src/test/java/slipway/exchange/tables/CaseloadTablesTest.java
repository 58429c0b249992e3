package slipway.exchange.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipway.care.facts.EpisodeFacts;
import slipway.exchange.SampleEpisodes;

class CaseloadTablesTest {
    private static final EpisodeFacts FULL = SampleEpisodes.full();
    private static final byte[] KEY = "0123456789abcdef".getBytes(StandardCharsets.UTF_8);
    private static final Map<String, String> FILES = CaseloadTables.of(List.of(FULL), KEY);

    private static List<CSVRecord> rows(String name) throws IOException {
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(FILES.getOrDefault(name, "")))
                .getRecords();
    }

    @Test
    void noNameNoWordsAndNoDateOfTheRecordIsLeft() {
        String all = String.join("\n", FILES.values());
        assertThat(all)
                .doesNotContain("Lindqvist", "low-irritability-stiff", "six-hour drive", "Almond", "Okoro", "1974");
        var days = FULL.visits().stream().map(visit -> visit.day().toString()).toList();
        assertThat(rowsOf("visits.csv")).noneMatch(line -> days.stream().anyMatch(line::contains));
    }

    private static List<String> rowsOf(String name) {
        return FILES.getOrDefault(name, "").lines().toList();
    }

    @Test
    void timeBetweenDaysIsKept() throws IOException {
        List<LocalDate> moved = rows("visits.csv").stream()
                .map(row -> LocalDate.parse(row.get("day")))
                .toList();
        List<LocalDate> real = FULL.visits().stream().map(visit -> visit.day()).toList();
        long shift = ChronoUnit.DAYS.between(real.get(0), moved.get(0));
        assertThat(moved)
                .isEqualTo(real.stream().map(day -> day.plusDays(shift)).toList());
        assertThat(rows("scores.csv").get(0).get("day")).isEqualTo(moved.get(0).toString());
    }

    @Test
    void everyColumnIsInTheDictionaryAndNoOther() throws IOException {
        List<String> told = rows(CaseloadTables.DICTIONARY).stream()
                .map(row -> row.get("table") + "/" + row.get("column"))
                .toList();
        List<String> there = FILES.keySet().stream()
                .filter(name -> !name.equals(CaseloadTables.DICTIONARY))
                .flatMap(
                        name -> List.of(rowsOf(name).get(0).split(",")).stream().map(column -> name + "/" + column))
                .toList();
        assertThat(told).isEqualTo(there);
    }

    @Test
    void theKeyDecidesNamesAndShifts() {
        assertThat(CaseloadTables.of(List.of(FULL), KEY)).isEqualTo(FILES);
        byte[] other = "another key with enough bytes".getBytes(StandardCharsets.UTF_8);
        assertThat(CaseloadTables.of(List.of(FULL), other).get("episodes.csv")).isNotEqualTo(FILES.get("episodes.csv"));
        assertThatThrownBy(() -> CaseloadTables.of(List.of(FULL), new byte[8]))
                .isInstanceOf(IllegalArgumentException.class);
        var pseudonyms = new Pseudonyms(KEY);
        LocalDate day = LocalDate.of(2026, 1, 1);
        assertThat(IntStream.range(0, 1000)
                        .mapToObj(i -> ChronoUnit.DAYS.between(day, pseudonyms.shifted("case-" + i, day)))
                        .toList())
                .allMatch(shift -> Math.abs(shift) <= 182)
                .anyMatch(shift -> shift < -150)
                .anyMatch(shift -> shift > 150);
    }

    @ParameterizedTest
    @CsvSource({"10, 10-14", "52, 50-54", "89.9, 85-89", "90, 90+", "101, 90+"})
    void agesStandInBands(double years, String band) {
        assertThat(CaseloadTables.band(years)).isEqualTo(band);
    }

    @Test
    void nothingIsAFormulaToASpreadsheet() {
        String text = Csv.of(List.of("a", "b"), List.of(List.of("=1+1", "-3.5"), List.of("@x", "say \"no\", he said")));
        assertThat(text).isEqualTo("a,b\n'=1+1,-3.5\n'@x,\"say \"\"no\"\", he said\"\n");
    }
}
