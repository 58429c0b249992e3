package slipway.app.serve;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import slipway.app.console.BadInputException;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.web.WebOptions;
import slipway.web.WebServer;

/** What both commands that start the pages have in common. */
final class Serving {
    private static final int PORT = 8470;
    private static final int PORTS = 65_536;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "" + PORT,
            description = "TCP port, 0 for any free one; ${DEFAULT-VALUE} if left out.")
    private int port;

    @Option(
            names = "--address",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description = "Network address to listen on; ${DEFAULT-VALUE}, this machine only, if left out.")
    private String address = "";

    @Option(
            names = "--public-address",
            paramLabel = "URL",
            description = "How phones reach this server, for the codes on paper, for example https://clinic.example.")
    private Optional<String> publicAddress = Optional.empty();

    /** Starts the server on records and prints where it is. */
    WebServer start(Store store, Path data, Optional<String> database, boolean demo) {
        if (port < 0 || port >= PORTS) {
            throw new BadInputException("--port must be within 0 and 65535, was " + port);
        }
        if (publicAddress
                .filter(url -> !url.matches("https?://[A-Za-z0-9.:\\[\\]-]{1,200}/?"))
                .isPresent()) {
            throw new BadInputException(
                    "--public-address must be http:// or https:// and a host, was " + publicAddress.get());
        }
        var options = new WebOptions(port, address, data, database, publicAddress, demo);
        return WebServer.start(options, store, Clock.systemUTC(), Map.of());
    }

    void announce(PrintWriter out, WebServer server) {
        out.printf(Locale.ROOT, "Slipway is at http://%s:%d%n", shown(), server.port());
    }

    private String shown() {
        return address.equals("127.0.0.1") || address.equals("0.0.0.0") ? "localhost" : address;
    }

    /** Opens the records of a folder or of a database server. */
    static Store open(Path folder, Optional<String> database) {
        StoreSettings settings = database.map(url -> StoreSettings.postgres(
                        url, secret("SLIPWAY_DATABASE_USER"), secret("SLIPWAY_DATABASE_PASSWORD")))
                .orElseGet(() -> StoreSettings.inFolder(folder));
        return Store.open(settings);
    }

    private static String secret(String name) {
        return Optional.ofNullable(System.getenv(name)).orElse("");
    }
}
