package slipway.care.casefile;

/** Language of what the person gets to read. */
public enum Language {
    ENGLISH("en"),
    SPANISH("es");

    private final String tag;

    Language(String tag) {
        this.tag = tag;
    }

    /** The tag used in files and documents, for example {@code en}. */
    public String tag() {
        return tag;
    }
}
