package slipway.app.records;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.store.Store;
import slipway.store.backup.BackupKey;
import slipway.store.backup.BackupReport;

/** {@code slipway backup}: all records into one sealed file. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Writes all records of one moment into one sealed file, while others go on working. The file is opened again"
                    + " and checked before it gets its name. Whichever database the records come from, the backup goes"
                    + " back into either.",
            "",
            "If TARGET is a folder, the file is named by the time. 'slipway serve --backup' does this every night. Not in it:"
                    + " who is signed in at the moment, and what else lies in the folder of the records."
        })
public final class BackupCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "TARGET",
            description = "A folder, which is made when it is not there, or a new file: a name with an ending.")
    private Path target = Path.of("");

    @Mixin
    private RecordsPlace place = new RecordsPlace();

    @Mixin
    private KeyOption key = new KeyOption();

    @Option(
            names = "--keep",
            paramLabel = "N",
            description = "With a folder: delete older backups in it, so that the N newest remain.")
    private Optional<Integer> keep = Optional.empty();

    @Override
    public Integer call() throws IOException {
        boolean folder = Files.isDirectory(target) || isNewFolder();
        if (keep.isPresent() && (!folder || keep.get() < 1)) {
            throw new BadInputException("slipway: --keep needs a folder and must be 1 or more");
        }
        BackupKey sealing = key.forNew();
        Instant now = Instant.now();
        Path file = folder ? new BackupFolder(target).file(now) : target;
        PrintWriter out = spec.commandLine().getOut();
        try (Store store = place.open()) {
            if (folder) {
                Files.createDirectories(target);
            }
            BackupReport report = store.backups().write(file, sealing, place.folder(), now);
            out.println(file);
            int status = tell(out, report);
            if (keep.isPresent()) {
                new BackupFolder(target).keepNewest(keep.get());
            }
            return status;
        }
    }

    /** Who writes "backups" means a folder: a file of this name would be overlooked by --keep and by whoever looks for it. */
    private boolean isNewFolder() {
        Path name = target.getFileName();
        return Files.notExists(target) && name != null && !name.toString().contains(".");
    }

    /** Prints what a backup holds; gives the exit status. */
    static int tell(PrintWriter out, BackupReport report) {
        out.printf(
                "%d people, %d entries in the trail%n",
                report.people(), report.trail().entries());
        out.println(report.trail().headsDigest());
        report.trail().breaks().forEach(found -> out.println("BROKEN  " + found));
        out.flush();
        return report.trail().isIntact() ? ExitStatus.OK : ExitStatus.DAMAGE;
    }
}
