package slipway.web.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.io.Serializable;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a device is asked to sign. It lies in the session, for one purpose and one answer.
 *
 * @param value in base64url
 * @param purpose what the answer is for
 */
record PasskeyChallenge(String value, String purpose, Instant at) implements Serializable {
    /** As long as the browser is told to wait for the device. */
    static final Duration VALID = Duration.ofMinutes(5);

    /** Signing in. */
    static final String ENTER = "enter";

    private static final String KEY = "passkeyChallenge";
    private static final int BYTES = 32;
    private static final SecureRandom RANDOM = new SecureRandom();

    /** Adding one to an account, whose password was given just now. */
    static String add(String staffId) {
        return "add " + staffId;
    }

    /** A new one, in place of any before. */
    static String give(HttpServletRequest request, String purpose, Instant now) {
        var bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        String value = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        request.getSession().setAttribute(KEY, new PasskeyChallenge(value, purpose, now));
        return value;
    }

    /** The one that was given for this purpose within its time; it is gone afterwards, whatever comes of the answer. */
    static Optional<String> take(HttpServletRequest request, String purpose, Instant now) {
        @Nullable HttpSession session = request.getSession(false);
        if (session == null || !(session.getAttribute(KEY) instanceof PasskeyChallenge given)) {
            return Optional.empty();
        }
        session.removeAttribute(KEY);
        // Either way, since the clock of the server that gave it may be ahead of ours.
        boolean fresh = Duration.between(given.at(), now).abs().compareTo(VALID) <= 0;
        return fresh && given.purpose().equals(purpose) ? Optional.of(given.value()) : Optional.empty();
    }
}
