package slipway.web.door;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.Optional;
import java.util.stream.Stream;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Component;
import slipway.store.session.ServerKeys;
import slipway.web.WebOptions;

/**
 * The cookie of the patient's pages: who opened which link, signed with HMAC-SHA-256 (RFC 2104). It has no idle end, so
 * that nobody loses a form by resting; revoking the link ends it at once because the link is looked up at each request.
 * It is sent below the path of its {@link Place} only, and a session of staff in the same browser has nothing to do with
 * it.
 */
@Component
public class PatientCookie {
    private static final String KEY = "patient-cookie";
    private static final String FORM = "1";

    private final ServerKeys keys;
    private final WebOptions options;
    private final Clock clock;

    PatientCookie(ServerKeys keys, WebOptions options, Clock clock) {
        this.keys = keys;
        this.options = options;
        this.clock = clock;
    }

    /** The cookie of whoever has opened a link, until that link ends. */
    public ResponseCookie of(PatientUser user, Instant linkExpires, Place place, HttpServletRequest request) {
        String said = String.join(".", FORM, user.linkId(), user.clinicId());
        Duration left = Duration.between(clock.instant(), linkExpires);
        return cookie(
                said + "." + signature("cookie" + place.mark(), said),
                left.isNegative() ? Duration.ZERO : left,
                place,
                request);
    }

    /** Takes the cookie away. */
    public ResponseCookie none(Place place, HttpServletRequest request) {
        return cookie("", Duration.ZERO, place, request);
    }

    private ResponseCookie cookie(String value, Duration age, Place place, HttpServletRequest request) {
        // Lax: a tap on a link in a message opens the pages; a form of another site is still sent without it.
        return ResponseCookie.from(place.cookie(), value)
                .path(place.path())
                .httpOnly(true)
                .secure(options.reachedOverTls() || request.isSecure())
                .sameSite("Lax")
                .maxAge(age)
                .build();
    }

    /** Who sent a request; empty without a cookie that this program signed. */
    public Optional<PatientUser> read(HttpServletRequest request) {
        Place place = Place.of(request);
        return value(request).flatMap(value -> {
            String[] parts = value.split("\\.", -1);
            if (parts.length != 4
                    || !parts[0].equals(FORM)
                    || !PatientUser.isId(parts[1])
                    || !PatientUser.isId(parts[2])
                    || !same(
                            parts[3], signature("cookie" + place.mark(), value.substring(0, value.lastIndexOf('.'))))) {
                return Optional.empty();
            }
            return Optional.of(new PatientUser(parts[1], parts[2]));
        });
    }

    /** What a form must bring along with the cookie; the same as long as the cookie is, so that no form grows old. */
    public Optional<String> formProof(HttpServletRequest request) {
        return read(request)
                .flatMap(user -> value(request))
                .map(value -> signature("form" + Place.of(request).mark(), value));
    }

    /** A name for whom the pages are about that tells nothing and stays the same from code to code. */
    public String alias(String episodeId) {
        return signature("alias", episodeId).substring(0, 22);
    }

    private static Optional<String> value(HttpServletRequest request) {
        String name = Place.of(request).cookie();
        return Stream.ofNullable(request.getCookies())
                .flatMap(Stream::of)
                .filter(cookie -> cookie.getName().equals(name))
                .map(Cookie::getValue)
                .filter(value -> value.length() <= 300)
                .findFirst();
    }

    private static boolean same(String one, String other) {
        return MessageDigest.isEqual(
                one.getBytes(StandardCharsets.US_ASCII), other.getBytes(StandardCharsets.US_ASCII));
    }

    private String signature(String purpose, String text) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(keys.get(KEY, clock.instant()), "HmacSHA256"));
            byte[] signed = mac.doFinal((purpose + "\n" + text).getBytes(StandardCharsets.UTF_8));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(signed);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has HMAC-SHA-256", e);
        }
    }
}
