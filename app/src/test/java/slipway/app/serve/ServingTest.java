package slipway.app.serve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.Base64;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import slipway.app.console.BadInputException;
import slipway.store.Store;
import slipway.web.WebServer;

/** The server as the options ask for it: by itself over TLS, or behind a proxy that does TLS. */
class ServingTest {
    private static final char[] PASSWORD = "changeit".toCharArray();

    @TempDir
    private Path folder = Path.of("");

    private Serving serving(String... options) {
        return CommandLine.populateCommand(new Serving(), options);
    }

    private HttpResponse<String> signInPage(HttpClient client, String address) throws Exception {
        var request = HttpRequest.newBuilder(URI.create(address + "/set-up")).GET();
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void withACertificateThePagesAreServedOverTlsOnly() throws Exception {
        KeyStore made = selfSigned();
        Serving serving = serving(
                "--port",
                "0",
                "--certificate",
                pem("chain").toString(),
                "--key",
                pem("key").toString());
        try (Store store = Serving.open(folder, Optional.empty());
                WebServer server = serving.start(store, folder, Optional.empty(), false)) {
            HttpClient trusting =
                    HttpClient.newBuilder().sslContext(trust(made)).build();
            var page = signInPage(trusting, "https://localhost:" + server.port());
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.sslSession().orElseThrow().getProtocol()).isEqualTo("TLSv1.3");
            assertThat(page.headers().firstValue("Set-Cookie").orElse("")).contains("Secure");
            assertThat(page.headers().firstValue("Strict-Transport-Security")).isPresent();

            var old = new SSLParameters();
            old.setProtocols(new String[] {"TLSv1.2"});
            old.setCipherSuites(new String[] {"TLS_RSA_WITH_AES_128_CBC_SHA"});
            HttpClient weak = HttpClient.newBuilder()
                    .sslContext(trust(made))
                    .sslParameters(old)
                    .build();
            assertThatThrownBy(() -> signInPage(weak, "https://localhost:" + server.port()))
                    .isInstanceOf(SSLHandshakeException.class);
            assertThat(signInPage(HttpClient.newHttpClient(), "http://localhost:" + server.port())
                            .statusCode())
                    .isEqualTo(400);
        }
    }

    /** The proxy speaks HTTP to the server; browsers must still be told never to. */
    @Test
    void behindAProxyWithTlsTheCookieIsSecureAndHttpsOnlyIsPromised() throws Exception {
        Serving serving = serving("--port", "0", "--public-address", "https://clinic.example");
        try (Store store = Serving.open(folder, Optional.empty());
                WebServer server = serving.start(store, folder, Optional.empty(), false)) {
            var page = signInPage(HttpClient.newHttpClient(), "http://localhost:" + server.port());
            assertThat(page.headers().firstValue("Set-Cookie").orElse("")).contains("Secure");
            assertThat(page.headers().firstValue("Strict-Transport-Security")).isPresent();
        }
    }

    @Test
    void aCertificateThatCannotBeReadIsNamed() {
        Serving serving = serving("--port", "0", "--certificate", "nowhere.pem", "--key", "nowhere.key");
        try (Store store = Serving.open(folder, Optional.empty())) {
            assertThatThrownBy(() -> serving.start(store, folder, Optional.empty(), false))
                    .isInstanceOf(BadInputException.class)
                    .hasMessageContaining("nowhere.pem");
        }
    }

    /** Made by the tool of the JDK and written as the two PEM files that an authority hands out. */
    private KeyStore selfSigned() throws Exception {
        Path store = folder.resolve("made.p12");
        Path tool = Path.of(System.getProperty("java.home"), "bin", "keytool");
        int status = new ProcessBuilder(
                        tool.toString(),
                        "-genkeypair",
                        "-alias",
                        "a",
                        "-keyalg",
                        "EC",
                        "-groupname",
                        "secp256r1",
                        "-dname",
                        "CN=localhost",
                        "-ext",
                        "SAN=dns:localhost",
                        "-storetype",
                        "PKCS12",
                        "-keystore",
                        store.toString(),
                        "-storepass",
                        "changeit")
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("keytool.log").toFile())
                .start()
                .waitFor();
        assertThat(status).as(Files.readString(folder.resolve("keytool.log"))).isZero();
        KeyStore made = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(store)) {
            made.load(in, PASSWORD);
        }
        write("chain", "CERTIFICATE", made.getCertificate("a").getEncoded());
        write("key", "PRIVATE KEY", made.getKey("a", PASSWORD).getEncoded());
        return made;
    }

    private Path pem(String name) {
        return folder.resolve(name + ".pem");
    }

    private void write(String name, String kind, byte[] der) throws IOException {
        String body = Base64.getMimeEncoder(64, "\n".getBytes(StandardCharsets.US_ASCII))
                .encodeToString(der);
        Files.writeString(pem(name), "-----BEGIN %s-----%n%s%n-----END %s-----%n".formatted(kind, body, kind));
    }

    private static SSLContext trust(KeyStore made) throws GeneralSecurityException, IOException {
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, PASSWORD);
        trusted.setCertificateEntry("a", made.getCertificate("a"));
        var managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        managers.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, managers.getTrustManagers(), null);
        return context;
    }
}
