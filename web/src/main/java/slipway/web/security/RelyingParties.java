package slipway.web.security;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.Optional;
import java.util.Set;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;
import slipway.web.WebOptions;

/** The relying party of this server: never taken from a request, whose host anybody may write. */
@Component
class RelyingParties {
    private static final Set<String> THIS_MACHINE = Set.of("localhost", "127.0.0.1", "[::1]", "::1");

    private final WebOptions options;
    private final WebServerApplicationContext context;
    private final boolean tls;

    RelyingParties(WebOptions options, WebServerApplicationContext context, Environment settings) {
        this.options = options;
        this.context = context;
        this.tls = settings.containsProperty("server.ssl.certificate");
    }

    /** Empty if passkeys cannot work at the address of this server. */
    Optional<RelyingParty> find() {
        return options.publicAddress()
                .map(address -> RelyingParty.of(URI.create(address)))
                .orElseGet(this::here);
    }

    /**
     * The relying party to name to whoever asks for a page: empty too where the server was told no address and is asked
     * from another machine, which "localhost" would lead astray. The host of the request chooses between two sentences
     * and nothing else.
     */
    Optional<RelyingParty> findFor(HttpServletRequest request) {
        boolean led = options.publicAddress().isPresent() || THIS_MACHINE.contains(request.getServerName());
        return led ? find() : Optional.empty();
    }

    private Optional<RelyingParty> here() {
        return Optional.ofNullable(context.getWebServer()).flatMap(server -> RelyingParty.here(tls, server.getPort()));
    }
}
