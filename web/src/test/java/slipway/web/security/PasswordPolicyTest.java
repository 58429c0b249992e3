package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths, blocklist and absence of composition rules as in NIST SP 800-63B-4 (2025), section 3.1.1. */
class PasswordPolicyTest {
    private final PasswordPolicy policy = new PasswordPolicy();

    @ParameterizedTest
    @CsvSource({
        "fourteen chars, false, password.short.alone",
        "fifteen letters, false, ''",
        "eight ok, true, ''",
        "seven o, true, password.short.second",
        "\u00fcber alle berge \ud83d\ude42, false, ''",
        "aaaaaaaaaaaaaaaa, false, password.common",
        "password, true, password.common",
        "PASSWORD, true, password.common",
        "mara.lindholm.physio, false, password.common"
    })
    void refusesTheShortAndTheCommonOnly(String password, boolean second, String key) {
        assertThat(policy.refusal(password, second, "mara.lindholm.physio").orElse(""))
                .isEqualTo(key);
    }

    @org.junit.jupiter.api.Test
    void refusesMegabytes() {
        assertThat(policy.refusal("abcdefgh".repeat(40), false, "x1")).contains("password.long");
    }
}
