package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RelyingPartyTest {
    /** Origins as RFC 6454, section 6.2, writes them. */
    @ParameterizedTest
    @CsvSource({
        "https://clinic.example, clinic.example, https://clinic.example",
        "https://Clinic.Example:443/, clinic.example, https://clinic.example",
        "https://clinic.example:8443, clinic.example, https://clinic.example:8443",
        "http://localhost:8470, localhost, http://localhost:8470",
        "http://localhost:80/, localhost, http://localhost",
    })
    void theHostIsTheIdAndTheOriginIsAsBrowsersWriteIt(String address, String id, String origin) {
        assertThat(RelyingParty.of(URI.create(address))).contains(new RelyingParty(id, origin));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://clinic.example",
                "https://192.0.2.7",
                "https://[2001:db8::1]",
                "http://127.0.0.1:8470",
                "http://localhost.clinic.example",
                "ftp://clinic.example"
            })
    void withoutTlsOrANameThereIsNone(String address) {
        assertThat(RelyingParty.of(URI.create(address))).isEmpty();
    }

    @Test
    void aServerThatWasToldNothingIsThisMachine() {
        assertThat(RelyingParty.here(false, 8470)).contains(new RelyingParty("localhost", "http://localhost:8470"));
        assertThat(RelyingParty.here(true, 8443)).contains(new RelyingParty("localhost", "https://localhost:8443"));
    }
}
