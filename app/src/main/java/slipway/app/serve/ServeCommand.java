package slipway.app.serve;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slipway.app.upkeep.NightlyBackup;
import slipway.app.upkeep.Upkeep;
import slipway.store.Store;
import slipway.store.work.Worker;
import slipway.web.WebServer;
import slipway.web.remind.MailSettings;
import slipway.web.security.SetUpCode;

/** The pages on real records. */
@Command(
        name = "serve",
        sortOptions = false,
        mixinStandardHelpOptions = true,
        description = {
            "Starts the pages on the records of a folder, or of a PostgreSQL server.",
            "",
            "The first start prints a code; the page at /set-up asks for it and makes the clinic and its first"
                    + " account. Stop with Ctrl+C; nothing that a page has confirmed is lost."
        })
public final class ServeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--data",
            required = true,
            paramLabel = "FOLDER",
            description = "Folder of the records; made if it is not there.")
    private Path data = Path.of("");

    @Option(
            names = "--database",
            paramLabel = "URL",
            description = {
                "A PostgreSQL server instead of the file in the folder: jdbc:postgresql://host/name.",
                "User and password come from SLIPWAY_DATABASE_USER and SLIPWAY_DATABASE_PASSWORD."
            })
    private Optional<String> database = Optional.empty();

    @Mixin
    private Serving serving = new Serving();

    @ArgGroup(exclusive = false)
    private @Nullable BackupOptions backup;

    @ArgGroup(exclusive = false)
    private @Nullable MailOptions mail;

    @Override
    public Integer call() throws InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        Optional<NightlyBackup> nightly = Optional.ofNullable(backup).map(BackupOptions::nightly);
        Optional<MailSettings> post = Optional.ofNullable(mail).map(given -> given.settings(serving.publicAddress()));
        try (Store store = Serving.open(data, database);
                WebServer server = serving.start(store, data, database, false);
                Worker upkeep = Upkeep.of(store, server, data, nightly);
                Worker reminders = Upkeep.reminders(store, server, post)) {
            serving.announce(out, server);
            if (SetUpCode.needed(store.records())) {
                out.println("First start: open /set-up there and enter this code within a day:");
                out.println("  " + SetUpCode.renew(store.records(), Clock.systemUTC()));
            }
            out.flush();
            upkeep.start(Upkeep.LOOK_EVERY);
            reminders.start(Upkeep.LOOK_EVERY);
            server.await();
        }
        return 0;
    }
}
