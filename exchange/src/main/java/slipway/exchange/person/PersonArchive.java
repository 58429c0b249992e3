package slipway.exchange.person;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Episode;
import slipway.care.record.papers.StoredDocument;
import slipway.care.record.person.Person;
import slipway.exchange.ExchangeData;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Everything that is kept of one person, as one archive: {@code record.json}, the same as tables with a dictionary, and
 * the documents as they are.
 */
public final class PersonArchive {
    private static final Map<String, String> ENDS =
            Map.of("application/pdf", ".pdf", "text/html", ".html", "application/json", ".json");

    private final Records records;
    private final Person person;
    private final Act act;

    private PersonArchive(Records records, Person person, Act act) {
        this.records = records;
        this.person = person;
        this.act = act;
    }

    /**
     * The archive as a zip file.
     *
     * @param act must see all episodes of the person: of a lead, or of the program
     * @throws IllegalArgumentException if the act does not
     */
    public static byte[] of(Records records, Person person, Act act) {
        if (!act.role().seesClinic()) {
            throw new IllegalArgumentException("an archive is of all episodes; role " + act.role() + " may see fewer");
        }
        return new PersonArchive(records, person, act).zip();
    }

    private byte[] zip() {
        List<Chart> charts = records.charts().ofPerson(person.id(), act).stream()
                .map(this::chart)
                .toList();
        PersonRecord record = PersonRecord.of(records, person, charts, act);
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            JsonMapper json = JsonMapper.builder()
                    .enable(SerializationFeature.INDENT_OUTPUT)
                    .build();
            put(zip, "read-me.txt", ExchangeData.text("person-read-me.txt").getBytes(StandardCharsets.UTF_8));
            put(zip, "record.json", json.writeValueAsBytes(record.tree()));
            for (Map.Entry<String, String> table : PersonTables.of(record).entrySet()) {
                put(zip, "tables/" + table.getKey(), table.getValue().getBytes(StandardCharsets.UTF_8));
            }
            for (Map.Entry<String, byte[]> document : documents(charts).entrySet()) {
                put(zip, "documents/" + document.getKey(), document.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private Chart chart(Episode episode) {
        return records.charts().open(episode.id(), act).chartIfOpen().orElseThrow();
    }

    private static Map<String, byte[]> documents(List<Chart> charts) {
        var documents = new LinkedHashMap<String, byte[]>();
        for (Chart chart : charts) {
            for (StoredDocument document : chart.documents().list()) {
                String name = "%s-%s%s"
                        .formatted(
                                document.kind().replaceAll("[^A-Za-z0-9-]", "-"),
                                document.id(),
                                ENDS.getOrDefault(document.mediaType(), ".bin"));
                documents.put(name, chart.documents().bytes(document.id()).orElseThrow());
            }
        }
        return documents;
    }

    private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
        var entry = new ZipEntry(name);
        // The same content gives the same archive.
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }
}
