package slipway.exercises.readability;

import java.util.List;
import slipway.exercises.exercise.Language;

/**
 * Whether a text is easy enough for a patient: English at most grade 6 by Flesch–Kincaid, Spanish at least 65 by INFLESZ
 * (fairly easy).
 *
 * @param language of the text
 * @param counts what was counted
 * @param score by the formula of the language
 */
public record ReadingLevel(Language language, TextCounts counts, double score) {
    /** Highest grade for patients, as the American Academy of Family Physicians asks (Am Fam Physician 2015;92:118). */
    public static final double HIGHEST_GRADE_EN = 6;
    /** Lowest INFLESZ score for patients: the lower end of the band "fairly easy" (bands: Barrio 2008). */
    public static final double LOWEST_INFLESZ_ES = 65;

    /** The level of a text given as its pieces, without headings. */
    public static ReadingLevel of(Language language, List<String> texts) {
        TextCounts counts = TextCounts.of(language, texts);
        Formula formula = language == Language.EN ? Formula.FLESCH_KINCAID : Formula.INFLESZ;
        return new ReadingLevel(language, counts, formula.score(counts));
    }

    /** Whether a patient can be expected to read it. */
    public boolean easyEnough() {
        return language == Language.EN ? score <= HIGHEST_GRADE_EN : score >= LOWEST_INFLESZ_ES;
    }

    @Override
    public String toString() {
        return language == Language.EN
                ? "Flesch-Kincaid grade %.1f (at most %.0f)".formatted(Math.max(0, score), HIGHEST_GRADE_EN)
                : "INFLESZ %.1f (at least %.0f)".formatted(score, LOWEST_INFLESZ_ES);
    }
}
