package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;

class PasskeyChallengeTest {
    private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");

    @Test
    void itCountsOnceForItsPurposeAndForFiveMinutes() {
        var request = new MockHttpServletRequest();
        assertThat(PasskeyChallenge.take(request, "enter", NOON)).isEmpty();
        String given = PasskeyChallenge.give(request, "enter", NOON);
        assertThat(given).hasSize(43);
        assertThat(PasskeyChallenge.take(request, "enter", NOON.plusSeconds(300)))
                .contains(given);
        assertThat(PasskeyChallenge.take(request, "enter", NOON.plusSeconds(300)))
                .isEmpty();
        PasskeyChallenge.give(request, "enter", NOON);
        assertThat(PasskeyChallenge.take(request, "enter", NOON.plusSeconds(301)))
                .isEmpty();
        // Given by a server whose clock is a little ahead.
        PasskeyChallenge.give(request, "enter", NOON);
        assertThat(PasskeyChallenge.take(request, "enter", NOON.minusSeconds(2)))
                .isPresent();
        PasskeyChallenge.give(request, PasskeyChallenge.add("ada"), NOON);
        assertThat(PasskeyChallenge.take(request, PasskeyChallenge.add("bo"), NOON))
                .isEmpty();
        assertThat(PasskeyChallenge.give(request, "enter", NOON))
                .isNotEqualTo(PasskeyChallenge.give(request, "enter", NOON));
    }
}
