package slipway.exchange.tables;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import slipway.care.facts.ChartFacts;
import slipway.care.facts.EpisodeFacts;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.access.Clinic;
import slipway.care.record.assembly.CaseAssembly;
import slipway.care.record.chart.Chart;

/**
 * What the records know of some episodes, for {@link CaseloadTables}.
 *
 * @param leftOut how many episodes were no whole case, or out of reach
 * @param notRead how many entries stood in a form that is not understood
 */
public record CaseloadArchive(List<EpisodeFacts> facts, int leftOut, int notRead) {
    public CaseloadArchive {
        facts = List.copyOf(facts);
    }

    /** Opens the charts one by one; the trail notes each as a reading. */
    public static CaseloadArchive of(
            Records records, Clinic clinic, List<String> episodeIds, Instant now, ZoneId zone, Act act) {
        var facts = new ArrayList<EpisodeFacts>();
        int notRead = 0;
        for (String id : episodeIds) {
            Optional<ChartFacts> found =
                    records.charts().open(id, act).chartIfOpen().flatMap(chart -> facts(chart, clinic, now, zone));
            if (found.isPresent()) {
                facts.add(found.get().facts());
                notRead += found.get().notRead().size();
            }
        }
        return new CaseloadArchive(facts, episodeIds.size() - facts.size(), notRead);
    }

    private static Optional<ChartFacts> facts(Chart chart, Clinic clinic, Instant now, ZoneId zone) {
        return CaseAssembly.of(chart, clinic, LocalDate.ofInstant(now, zone))
                .complete()
                .map(whole -> ChartFacts.of(chart, whole.file(), Optional.empty(), id -> "", zone));
    }

    /** Files by name as one zip file. */
    public static byte[] zip(Map<String, String> files) {
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
