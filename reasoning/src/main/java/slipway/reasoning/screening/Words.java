package slipway.reasoning.screening;

/**
 * Plain words of a rule. The Spanish ones are a draft that no native-speaking clinician has reviewed.
 *
 * @param askEn the question in English; empty for a rule that is not asked
 * @param tellEn what it means and what to do, in English
 * @param askEs the question in Spanish; empty for a rule that is not asked
 * @param tellEs what it means and what to do, in Spanish
 */
public record Words(String askEn, String tellEn, String askEs, String tellEs) {
    public Words {
        if (tellEn.isBlank() || tellEs.isBlank() || askEn.isBlank() != askEs.isBlank()) {
            throw new IllegalArgumentException(
                    "a rule needs its words in English and Spanish, was \"%s\"".formatted(tellEn));
        }
    }
}
