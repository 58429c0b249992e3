package slipway.web.remind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class MailSettingsTest {
    private static MailSettings of(String host, MailSecurity security, Optional<String> password, String from) {
        return new MailSettings(host, 587, security, Optional.of("sender"), password, from, "https://clinic.example/");
    }

    @Test
    void plainGoesToThisMachineOnlyAndThePasswordIsNotShown() {
        Optional<String> secret = Optional.of("nobody knows");
        String from = "clinic@example.org";
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of("mail.example.org", MailSecurity.NONE, secret, from))
                .withMessageContaining("plain");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of("mail.example.org", MailSecurity.TLS, Optional.empty(), from))
                .withMessageContaining("password");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of("mail.example.org", MailSecurity.TLS, secret, "a@b\r\nBcc: c@d"))
                .withMessageContaining("name@place");
        MailSettings good = of("mail.example.org", MailSecurity.STARTTLS, secret, from);
        assertThat(good.toString()).doesNotContain("nobody knows");
        assertThat(good.publicAddress()).isEqualTo("https://clinic.example");
    }
}
