package slipway.web.door;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.http.ResponseCookie;
import slipway.exercises.exercise.Language;

/** The language that a person chose on a page. */
public final class PatientLanguage {
    private static final String LANGUAGE = "language";
    private static final String COOKIE = "-language";
    private static final Duration KEPT = Duration.ofDays(400);

    private PatientLanguage() {}

    /** The language that was chosen on a page, now or earlier. */
    public static Optional<Language> chosen(HttpServletRequest request) {
        String name = Place.of(request).cookie() + COOKIE;
        return asked(request)
                .or(() -> Stream.ofNullable(request.getCookies())
                        .flatMap(Stream::of)
                        .filter(cookie -> cookie.getName().equals(name))
                        .map(Cookie::getValue)
                        .flatMap(value -> Language.find(value).stream())
                        .findFirst());
    }

    /** Before anybody is known: chosen, or the first of the browser's that there is. */
    public static Language ofStranger(HttpServletRequest request) {
        return chosen(request)
                .or(() -> Language.find(request.getLocale().getLanguage()))
                .orElse(Language.EN);
    }

    /** Keeps the language that a page was asked for in; empty if it was asked for in none. */
    public static Optional<ResponseCookie> keep(HttpServletRequest request, Place place) {
        return asked(request)
                .map(language -> ResponseCookie.from(place.cookie() + COOKIE, language.code())
                        .path(place.path())
                        .httpOnly(true)
                        .secure(request.isSecure())
                        .sameSite("Lax")
                        .maxAge(KEPT)
                        .build());
    }

    private static Optional<Language> asked(HttpServletRequest request) {
        String asked = Optional.ofNullable(request.getParameter(LANGUAGE)).orElse("");
        return Language.find(asked.toLowerCase(Locale.ROOT));
    }
}
