package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.apache.commons.codec.binary.Base32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Codes against RFC 6238 (2011), appendix B, the rows of SHA-1. The table has eight digits; authenticators show the last
 * six of them, since both are the same number modulo a power of ten (RFC 4226 section 5.3).
 */
class SecondFactorReferenceTest {
    private static final String SECRET =
            new Base32().encodeAsString("12345678901234567890".getBytes(StandardCharsets.US_ASCII));

    @ParameterizedTest
    @CsvSource({
        "59, 94287082",
        "1111111109, 07081804",
        "1111111111, 14050471",
        "1234567890, 89005924",
        "2000000000, 69279037",
        "20000000000, 65353130"
    })
    void codesOfTheStandard(long second, String eightDigits) {
        assertThat(SecondFactor.codeAt(SECRET, Instant.ofEpochSecond(second))).isEqualTo(eightDigits.substring(2));
    }

    @Test
    void takesTheStepBeforeAndAfterAndNoOther() {
        Instant now = Instant.ofEpochSecond(1_234_567_890);
        assertThat(SecondFactor.matchingStep(SECRET, SecondFactor.codeAt(SECRET, now.minusSeconds(30)), now, 0))
                .isPresent();
        assertThat(SecondFactor.matchingStep(SECRET, SecondFactor.codeAt(SECRET, now.plusSeconds(30)), now, 0))
                .isPresent();
        assertThat(SecondFactor.matchingStep(SECRET, SecondFactor.codeAt(SECRET, now.minusSeconds(90)), now, 0))
                .isEmpty();
    }

    @Test
    void aCodeCountsOnce() {
        Instant now = Instant.ofEpochSecond(1_234_567_890);
        String code = SecondFactor.codeAt(SECRET, now);
        long step = SecondFactor.matchingStep(SECRET, code, now, 0).getAsLong();
        assertThat(SecondFactor.matchingStep(SECRET, code, now, step)).isEmpty();
    }
}
