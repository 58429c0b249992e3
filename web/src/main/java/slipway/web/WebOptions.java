package slipway.web;

import java.nio.file.Path;
import java.util.Optional;

/**
 * How the program is served.
 *
 * @param port TCP port, 0 for any free one
 * @param address network address to listen on
 * @param data folder of the records
 * @param database JDBC address of a PostgreSQL server; empty for the file in the folder
 * @param publicAddress how browsers reach this server, for links on paper; empty for localhost. With
 *     https the cookie is marked as secure and HTTPS-only is promised, whatever stands in front
 * @param demo whether the people are invented and the two demo sign-ins work
 */
public record WebOptions(
        int port, String address, Path data, Optional<String> database, Optional<String> publicAddress, boolean demo) {
    private static final int PORTS = 65_536;

    public WebOptions {
        if (port < 0 || port >= PORTS) {
            throw new IllegalArgumentException("port must be within 0 and 65535, was " + port);
        }
    }

    /** Whether browsers reach the server over TLS, by a proxy in front of it if not by itself. */
    public boolean reachedOverTls() {
        return publicAddress.filter(url -> url.startsWith("https:")).isPresent();
    }
}
