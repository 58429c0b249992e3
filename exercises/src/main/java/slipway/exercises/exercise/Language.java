package slipway.exercises.exercise;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A language that patients are addressed in. */
public enum Language {
    EN("en"),
    /** Written without a speaker's review so far; whatever shows it says so. */
    ES("es");

    private final String code;

    Language(String code) {
        this.code = code;
    }

    /** The code of ISO 639-1. */
    public String code() {
        return code;
    }

    /** For number formats and upper case. */
    public Locale locale() {
        return Locale.forLanguageTag(code);
    }

    /** The language with this code. */
    public static Optional<Language> find(String code) {
        return Arrays.stream(values())
                .filter(language -> language.code.equals(code))
                .findFirst();
    }
}
