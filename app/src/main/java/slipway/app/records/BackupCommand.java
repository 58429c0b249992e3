package slipway.app.records;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
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
            "If TARGET is a folder, the file is named by the time; run it every night from the system's clock. Not in it:"
                    + " who is signed in at the moment, and what else lies in the folder of the records."
        })
public final class BackupCommand implements Callable<Integer> {
    private static final String END = ".slipway-backup";
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "TARGET", description = "The file, which must not be there, or a folder that is.")
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
        boolean folder = Files.isDirectory(target);
        if (keep.isPresent() && (!folder || keep.get() < 1)) {
            throw new BadInputException("slipway: --keep needs a folder and must be 1 or more");
        }
        BackupKey sealing = key.forNew();
        Instant now = Instant.now();
        Path file = folder ? target.resolve("slipway-" + NAME.format(now) + END) : target;
        PrintWriter out = spec.commandLine().getOut();
        try (Store store = place.open()) {
            BackupReport report = store.backups().write(file, sealing, place.folder(), now);
            out.println(file);
            int status = tell(out, report);
            if (keep.isPresent()) {
                deleteOlder(target, keep.get());
            }
            return status;
        }
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

    private static void deleteOlder(Path folder, int keep) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            // Named by the time, so that the order of the names is that of the times.
            List<Path> old = all.filter(file -> file.getFileName().toString().matches("slipway-\\d{8}T\\d{6}Z" + END))
                    .sorted(Comparator.reverseOrder())
                    .skip(keep)
                    .toList();
            for (Path file : old) {
                Files.delete(file);
            }
        }
    }
}
