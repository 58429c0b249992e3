package slipway.web.patient;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.shell.Pages;

/** The frame and the language of the patient's pages. */
@Component
class PatientViews {
    private static final String LANGUAGE = "language";
    private static final String COOKIE = "slipway-home-language";

    private final Pages pages;

    PatientViews(Pages pages) {
        this.pages = pages;
    }

    String show(String view, Language language, HttpServletRequest request, Model model) {
        Words words = words(language);
        model.addAttribute("page", pages.pageApart(request, words.get("title")));
        model.addAttribute("t", words);
        model.addAttribute(LANGUAGE, language);
        return view;
    }

    static Words words(Language language) {
        return Words.beside(PatientViews.class, language);
    }

    /** The language that was chosen on a page, now or earlier. */
    static Optional<Language> chosen(HttpServletRequest request) {
        return asked(request)
                .or(() -> Stream.ofNullable(request.getCookies())
                        .flatMap(Stream::of)
                        .filter(cookie -> cookie.getName().equals(COOKIE))
                        .map(Cookie::getValue)
                        .flatMap(value -> Language.find(value).stream())
                        .findFirst());
    }

    /** Before anybody is known: chosen, or the first of the browser's that there is. */
    static Language ofStranger(HttpServletRequest request) {
        return chosen(request)
                .or(() -> Language.find(request.getLocale().getLanguage()))
                .orElse(Language.EN);
    }

    /** Keeps the language that a page was asked for in; empty if it was asked for in none. */
    static Optional<ResponseCookie> keep(HttpServletRequest request) {
        return asked(request)
                .map(language -> ResponseCookie.from(COOKIE, language.code())
                        .path("/home")
                        .httpOnly(true)
                        .secure(request.isSecure())
                        .sameSite("Lax")
                        .maxAge(java.time.Duration.ofDays(400))
                        .build());
    }

    private static Optional<Language> asked(HttpServletRequest request) {
        String asked = Optional.ofNullable(request.getParameter(LANGUAGE)).orElse("");
        return Language.find(asked.toLowerCase(Locale.ROOT));
    }
}
