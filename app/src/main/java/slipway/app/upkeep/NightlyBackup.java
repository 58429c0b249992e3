package slipway.app.upkeep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import slipway.app.console.BadInputException;
import slipway.app.records.BackupFolder;
import slipway.store.Store;
import slipway.store.backup.BackupKey;
import slipway.store.backup.BackupReport;
import slipway.store.work.Task;
import slipway.store.work.Turns;

/**
 * A backup every night.
 *
 * @param folder where the backups go
 * @param at by the clock of the place where the server stands
 * @param keep how many of the newest remain in the folder
 */
public record NightlyBackup(Path folder, LocalTime at, BackupKey key, int keep) {
    /** Name of the work in the records. */
    public static final String NAME = "backup";

    private static final int MOST_KEPT = 10_000;
    private static final Duration AGAIN = Duration.ofMinutes(10);

    public NightlyBackup {
        if (!Files.isDirectory(folder) || !Files.isWritable(folder)) {
            throw new BadInputException("slipway: --backup " + folder + " must be a folder that can be written to");
        }
        if (keep < 1 || keep > MOST_KEPT) {
            throw new BadInputException("slipway: --backup-keep must be within 1 and 10000, was " + keep);
        }
    }

    /**
     * @param plain for what is not sealed yet while it is made
     */
    Task task(Store store, Path plain, Clock clock) {
        return new Task(NAME, Turns.daily(at, ZoneId.systemDefault()), AGAIN, () -> run(store, plain, clock));
    }

    private String run(Store store, Path plain, Clock clock) throws IOException {
        var backups = new BackupFolder(folder);
        Files.createDirectories(plain);
        Path file = backups.file(clock.instant());
        BackupReport report = store.backups().write(file, key, plain, clock.instant());
        if (!report.trail().isIntact()) {
            // The file stays: it is what there is. Older ones stay too, since they may be better.
            throw new IOException(file.getFileName() + " was written, but the trail in it does not verify");
        }
        backups.keepNewest(keep);
        return "%s, %d people, %d entries in the trail"
                .formatted(file, report.people(), report.trail().entries());
    }
}
