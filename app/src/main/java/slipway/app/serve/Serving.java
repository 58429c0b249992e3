package slipway.app.serve;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
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

    /** Those with forward secrecy and authenticated encryption: a key that is stolen later opens no old recording. */
    private static final List<String> SUITES = List.of(
            "TLS_AES_256_GCM_SHA384",
            "TLS_AES_128_GCM_SHA256",
            "TLS_CHACHA20_POLY1305_SHA256",
            "TLS_ECDHE_ECDSA_WITH_AES_256_GCM_SHA384",
            "TLS_ECDHE_RSA_WITH_AES_256_GCM_SHA384",
            "TLS_ECDHE_ECDSA_WITH_AES_128_GCM_SHA256",
            "TLS_ECDHE_RSA_WITH_AES_128_GCM_SHA256");

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

    @ArgGroup(exclusive = false)
    private @Nullable Certificate certificate;

    /** Both files or neither. */
    static final class Certificate {
        @Option(
                names = "--certificate",
                required = true,
                paramLabel = "FILE",
                description = "Certificate and those above it, in PEM: the pages are served over TLS, not over HTTP.")
        private Path chain = Path.of("");

        @Option(
                names = "--key",
                required = true,
                paramLabel = "FILE",
                description = "Private key of the certificate, in PEM.")
        private Path key = Path.of("");

        Map<String, Object> settings() {
            return Map.of(
                    "server.ssl.certificate", readable("--certificate", chain),
                    "server.ssl.certificate-private-key", readable("--key", key),
                    "server.ssl.enabled-protocols", "TLSv1.3,TLSv1.2",
                    "server.ssl.ciphers", String.join(",", SUITES));
        }

        private static String readable(String option, Path file) {
            if (!Files.isReadable(file)) {
                throw new BadInputException(option + " " + file + " cannot be read");
            }
            return file.toUri().toString();
        }
    }

    /** How browsers reach this server, if that was said. */
    Optional<String> publicAddress() {
        return publicAddress;
    }

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
        return WebServer.start(
                options, store, Clock.systemUTC(), certificate == null ? Map.of() : certificate.settings());
    }

    void announce(PrintWriter out, WebServer server) {
        String scheme = certificate == null ? "http" : "https";
        out.printf(Locale.ROOT, "Slipway is at %s://%s:%d%n", scheme, shown(), server.port());
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
