package slipway.app.serve;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Optional;
import picocli.CommandLine.Option;
import slipway.app.console.BadInputException;
import slipway.app.records.KeyOption;
import slipway.app.upkeep.NightlyBackup;

/** A backup every night. */
final class BackupOptions {
    @Option(
            names = "--backup",
            required = true,
            paramLabel = "FOLDER",
            description = "Every night, write a sealed backup into this folder; of several servers one does it.")
    private Path folder = Path.of("");

    @Option(
            names = "--backup-at",
            paramLabel = "HH:MM",
            defaultValue = "02:00",
            description = "When, by the clock of this machine; ${DEFAULT-VALUE} if left out.")
    private String at = "";

    @Option(
            names = "--backup-key",
            paramLabel = "FILE",
            description = "The key file, see 'slipway backup --help'; without it SLIPWAY_BACKUP_PASSPHRASE.")
    private Optional<Path> key = Optional.empty();

    @Option(
            names = "--backup-keep",
            paramLabel = "N",
            defaultValue = "30",
            description = "How many of the newest remain in the folder; ${DEFAULT-VALUE} if left out.")
    private int keep;

    /** What these options ask for. */
    NightlyBackup nightly() {
        try {
            return new NightlyBackup(folder, LocalTime.parse(at), KeyOption.unattended(key), keep);
        } catch (DateTimeException e) {
            throw new BadInputException("slipway: --backup-at must be a time like 02:00, was " + at);
        }
    }
}
