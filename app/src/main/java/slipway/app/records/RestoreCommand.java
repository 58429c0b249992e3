package slipway.app.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.store.Store;
import slipway.store.backup.BackupKey;
import slipway.store.backup.Restoring;

/** {@code slipway restore}: a backup back into the records. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Brings a backup back to where no records are yet: a folder without them, or an empty PostgreSQL database. It"
                    + " never overwrites, and refuses a backup that is damaged in any place.",
            "",
            "The last line is the digest of the newest entries of the trail; it must be the one that the backup printed."
        })
public final class RestoreCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "BACKUP", description = "The file that 'slipway backup' wrote.")
    private Path backup = Path.of("");

    @Mixin
    private RecordsPlace place = new RecordsPlace();

    @Mixin
    private KeyOption key = new KeyOption();

    @Option(names = "--check", description = "Only check that the backup could be brought back; change nothing.")
    private boolean check;

    @Override
    public Integer call() throws IOException {
        if (!Files.isRegularFile(backup)) {
            throw new BadInputException("slipway: %s: there is no such file".formatted(backup));
        }
        BackupKey opening = key.forExisting();
        return BackupCommand.tell(
                spec.commandLine().getOut(),
                check
                        ? Restoring.check(backup, opening, place.folder())
                        : Store.restore(backup, opening, place.settings(), place.folder(), Instant.now()));
    }
}
