package slipway.app.records;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Episode;
import slipway.care.record.chart.ResultKind;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.care.record.papers.StoredDocument;
import slipway.care.record.person.Person;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Everything that is kept of one person, as one archive: {@code record.json}, and the documents as they are. */
final class PersonExport {
    private static final Map<String, String> ENDS =
            Map.of("application/pdf", ".pdf", "text/html", ".html", "application/json", ".json");

    private final Records records;
    private final Person person;
    private final Act act;

    PersonExport(Records records, Person person, Act act) {
        this.records = records;
        this.person = person;
        this.act = act;
    }

    byte[] zip() {
        List<Chart> charts = records.charts().ofPerson(person.id(), act).stream()
                .map(this::chart)
                .toList();
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("person", person);
        record.put("episodes", charts.stream().map(PersonExport::episode).toList());
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            JsonMapper json = JsonMapper.builder()
                    .enable(SerializationFeature.INDENT_OUTPUT)
                    .build();
            put(zip, "record.json", json.writeValueAsBytes(record));
            for (Chart chart : charts) {
                for (StoredDocument document : chart.documents().list()) {
                    String name = "documents/%s-%s%s"
                            .formatted(
                                    document.kind().replaceAll("[^A-Za-z0-9-]", "-"),
                                    document.id(),
                                    ENDS.getOrDefault(document.mediaType(), ".bin"));
                    put(zip, name, chart.documents().bytes(document.id()).orElseThrow());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private Chart chart(Episode episode) {
        return records.charts().open(episode.id(), act).chartIfOpen().orElseThrow();
    }

    private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
        var entry = new ZipEntry(name);
        // The same content gives the same archive.
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }

    private static Map<String, Object> episode(Chart chart) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("episode", chart.episode());
        all.put(
                "sections",
                Arrays.stream(Section.values())
                        .collect(Collectors.toMap(
                                Section::key, section -> versions(chart, section), (a, b) -> a, LinkedHashMap::new)));
        all.put("visits", chart.visits().list());
        all.put("tries", chart.visits().tries());
        all.put(
                "results",
                Arrays.stream(ResultKind.values())
                        .flatMap(kind -> chart.results().list(kind).stream())
                        .toList());
        all.put("plans", chart.plans().list());
        all.put("decisions", chart.decisions().list());
        all.put("checkIns", chart.checkIns().list());
        all.put("alerts", chart.checkIns().alerts());
        all.put("measures", chart.measures().list());
        all.put("goals", chart.goals().list());
        all.put("papers", chart.papers().list());
        all.put("documents", chart.documents().list());
        return all;
    }

    private static List<SectionRecord> versions(Chart chart, Section section) {
        return LongStream.rangeClosed(1, chart.section(section).version())
                .mapToObj(version -> chart.earlier(section, version))
                .flatMap(java.util.Optional::stream)
                .toList();
    }
}
