package slipway.app.serve;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import slipway.app.upkeep.Upkeep;
import slipway.store.Store;
import slipway.store.work.Worker;
import slipway.web.WebServer;
import slipway.web.demo.DemoClinic;

/** The pages on a clinic of invented people. */
@Command(
        name = "demo",
        sortOptions = false,
        mixinStandardHelpOptions = true,
        description = {
            "Starts a clinic of invented people to look around in.",
            "",
            "Its records are in a folder of their own that is deleted when the program ends. Stop with Ctrl+C."
        })
public final class DemoCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private Serving serving = new Serving();

    @Override
    public Integer call() throws IOException, InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        Path folder = Files.createTempDirectory("slipway-demo");
        Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
        try (Store store = Serving.open(folder, Optional.empty());
                WebServer server = serving.start(store, folder, Optional.empty(), true);
                Worker upkeep = Upkeep.of(store, server, folder, Optional.empty())) {
            server.part(DemoClinic.class).fill();
            serving.announce(out, server);
            out.println("All people there are invented. Two sign-ins:");
            DemoClinic.SIGN_INS.forEach((login, password) -> out.printf("  %-10s %s%n", login, password));
            out.println("Not a diagnosis, and no substitute for a licensed clinician. Stop with Ctrl+C.");
            out.flush();
            upkeep.start(Upkeep.LOOK_EVERY);
            server.await();
        }
        return 0;
    }

    /** As far as it can be deleted; what remains is for the system to clear. */
    private static void delete(Path folder) {
        try (var files = Files.list(folder)) {
            files.forEach(file -> file.toFile().delete());
            Files.delete(folder);
        } catch (IOException e) {
            folder.toFile().deleteOnExit();
        }
    }
}
