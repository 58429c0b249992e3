package slipway.app.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder of backups that are named by their times. */
public record BackupFolder(Path folder) {
    private static final String END = ".slipway-backup";
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    /** The file of a backup of this time. */
    public Path file(Instant at) {
        return folder.resolve("slipway-" + NAME.format(at) + END);
    }

    /** The backups in it, newest first. */
    public List<Path> list() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            // Named by the time, so that the order of the names is that of the times.
            return all.filter(file -> file.getFileName().toString().matches("slipway-\\d{8}T\\d{6}Z" + END))
                    .sorted(Comparator.reverseOrder())
                    .toList();
        }
    }

    /** Deletes all but the newest. */
    public void keepNewest(int count) throws IOException {
        List<Path> all = list();
        for (Path file : all.subList(Math.min(count, all.size()), all.size())) {
            Files.delete(file);
        }
    }
}
