package slipway.app.records;

import java.io.Console;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import picocli.CommandLine.Option;
import slipway.app.console.BadInputException;
import slipway.app.console.InputFiles;
import slipway.store.backup.BackupKey;

/** What a backup is sealed with: a key file, or a passphrase from the environment or the keyboard. */
public final class KeyOption {
    /** Never on the command line, which others on the machine can read. */
    private static final String PASSPHRASE = "SLIPWAY_BACKUP_PASSPHRASE";

    @Option(
            names = "--key-file",
            paramLabel = "FILE",
            description = {
                "A file of 32 random bytes or more that seals the backup; without it the passphrase in " + PASSPHRASE
                        + ", or one that is asked for.",
                "Without this file or passphrase nobody can open the backup, not even its owner."
            })
    private Optional<Path> file = Optional.empty();

    /** The key for a new backup; a passphrase from the keyboard is asked for twice. */
    BackupKey forNew() {
        return key(true);
    }

    /** The key of a backup that is there. */
    BackupKey forExisting() {
        return key(false);
    }

    private BackupKey key(boolean twice) {
        try {
            if (file.isPresent()) {
                return BackupKey.ofFile(InputFiles.read(file.get()));
            }
            return BackupKey.ofPassphrase(Optional.ofNullable(System.getenv(PASSPHRASE))
                    .map(String::toCharArray)
                    .orElseGet(() -> ask(twice)));
        } catch (IllegalArgumentException e) {
            throw new BadInputException("slipway: " + e.getMessage());
        }
    }

    /**
     * The key of a file or of the passphrase in the environment, where nobody sits at a keyboard.
     *
     * @throws BadInputException if there is neither, or it is too short
     */
    public static BackupKey unattended(Optional<Path> file) {
        if (file.isEmpty() && System.getenv(PASSPHRASE) == null) {
            throw new BadInputException("slipway: backups need a key: --backup-key FILE, or " + PASSPHRASE);
        }
        var option = new KeyOption();
        option.file = file;
        return option.forExisting();
    }

    private static char[] ask(boolean twice) {
        Console console = Optional.ofNullable(System.console())
                .orElseThrow(
                        () -> new BadInputException("slipway: a backup needs a key: --key-file, or " + PASSPHRASE));
        char[] first = console.readPassword("Passphrase of the backup: ");
        if (twice && !Arrays.equals(first, console.readPassword("The same again: "))) {
            throw new BadInputException("slipway: the two were not the same");
        }
        return first;
    }
}
