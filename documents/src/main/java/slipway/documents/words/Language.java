package slipway.documents.words;

import java.util.Locale;

/** A language that papers are written in. */
public enum Language {
    ENGLISH("en", true),
    /** Written without a speaker's review so far; whoever hands out a Spanish sheet is told so. */
    SPANISH("es", false);

    private final String tag;
    private final boolean reviewed;

    Language(String tag, boolean reviewed) {
        this.tag = tag;
        this.reviewed = reviewed;
    }

    /** Language tag, such as {@code en}; also the ending of the message files. */
    public String tag() {
        return tag;
    }

    /** Whether a speaker of the language has reviewed the texts; if not, the therapist must be told. */
    public boolean reviewed() {
        return reviewed;
    }

    /** The locale for dates: the wording of the United States in English, neutral Spanish otherwise. */
    public Locale locale() {
        return this == ENGLISH ? Locale.US : Locale.forLanguageTag("es");
    }
}
