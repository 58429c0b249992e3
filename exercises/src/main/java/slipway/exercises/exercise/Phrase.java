package slipway.exercises.exercise;

/** The same words in each language; neither is blank. */
public record Phrase(String en, String es) {
    public Phrase {
        if (en.isBlank() || es.isBlank()) {
            throw new IllegalArgumentException(
                    "a phrase needs its words in en and es, was \"%s\" / \"%s\"".formatted(en, es));
        }
        en = en.strip();
        es = es.strip();
    }

    /** The words in one language. */
    public String in(Language language) {
        return switch (language) {
            case EN -> en;
            case ES -> es;
        };
    }
}
