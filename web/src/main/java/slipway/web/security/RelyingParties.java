package slipway.web.security;

import java.net.URI;
import java.util.Optional;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;
import slipway.web.WebOptions;

/** The relying party of this server: never taken from a request, whose host anybody may write. */
@Component
class RelyingParties {
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

    private Optional<RelyingParty> here() {
        return Optional.ofNullable(context.getWebServer()).flatMap(server -> RelyingParty.here(tls, server.getPort()));
    }
}
