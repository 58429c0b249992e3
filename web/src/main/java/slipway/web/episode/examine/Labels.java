package slipway.web.episode.examine;

import java.util.Locale;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Side;

/** Items of an examination as the pages say them. */
public final class Labels {
    private static final Words WORDS = Words.beside(Labels.class, Language.EN);

    private Labels() {}

    /** An item by its word in the vocabulary. */
    public static String of(String item) {
        return ExamSheet.label(WORDS, item);
    }

    /** A drop of uncertainty with two digits behind the point. */
    public static String bits(double drop) {
        return String.format(Locale.ROOT, "%.2f", drop);
    }

    /** A side, within a sentence. */
    public static String of(Side side) {
        return WORDS.get(side == Side.RIGHT ? "side.right" : "side.left");
    }
}
