package slipway.benchmarks.load;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.web.WebOptions;
import slipway.web.WebServer;

/** The server that is measured, in a process of its own. Arguments: URL of the database, user, folder. */
public final class LoadServer {
    private LoadServer() {}

    /** Runs until it is killed. */
    public static void main(String[] args) throws InterruptedException {
        // Only the port goes to the output: what the log says there would come before it.
        PrintStream output = System.out;
        System.setOut(System.err);
        String password = Objects.requireNonNullElse(System.getenv("BENCH_PASSWORD"), "");
        try (Store store = Store.open(new StoreSettings(args[0], args[1], password, 4, 4))) {
            var options = new WebOptions(0, "127.0.0.1", Path.of(args[2]), Optional.empty(), Optional.empty(), false);
            try (WebServer server = WebServer.start(options, store, Clock.systemUTC(), Map.of())) {
                output.println("port " + server.port());
                output.flush();
                server.await();
            }
        }
    }
}
