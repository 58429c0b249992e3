package slipway.web.security;

import java.net.URI;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * For whom passkeys of this server are: a device answers pages of this origin only, and we take answers of no other (W3C
 * Web Authentication, "relying party").
 *
 * @param id host name that passkeys are bound to
 * @param origin scheme, host and port as browsers write them, without the port of the scheme
 */
public record RelyingParty(String id, String origin) {
    private static final String HERE = "localhost";
    private static final Pattern DOMAIN = Pattern.compile("[a-z0-9-]+(\\.[a-z0-9-]+)*");
    private static final Pattern NUMBERS = Pattern.compile("[0-9.]+");
    private static final int HTTP = 80;
    private static final int HTTPS = 443;

    /**
     * The relying party of an address; empty if browsers know no passkeys there: without TLS, but for the machine
     * itself, and where the host is no name.
     */
    static Optional<RelyingParty> of(URI address) {
        String scheme = String.valueOf(address.getScheme()).toLowerCase(Locale.ROOT);
        String host = String.valueOf(address.getHost()).toLowerCase(Locale.ROOT);
        boolean named = address.getHost() != null
                && DOMAIN.matcher(host).matches()
                && !NUMBERS.matcher(host).matches();
        boolean safe = scheme.equals("https") || (scheme.equals("http") && host.equals(HERE));
        if (!named || !safe) {
            return Optional.empty();
        }
        int usual = scheme.equals("https") ? HTTPS : HTTP;
        boolean bare = address.getPort() < 0 || address.getPort() == usual;
        return Optional.of(new RelyingParty(host, scheme + "://" + host + (bare ? "" : ":" + address.getPort())));
    }

    /** That of a server that was told no public address: this machine itself. */
    static Optional<RelyingParty> here(boolean tls, int port) {
        return of(URI.create((tls ? "https" : "http") + "://" + HERE + ":" + port));
    }
}
