package slipway.exercises.readability;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.evidence.BundledTable;

/** A published readability formula; its coefficients and their sources are in {@code readability.csv}. */
public enum Formula {
    /** English, 0 to about 100, higher is easier. */
    FLESCH_EASE("flesch-ease"),
    /** English, in years of school, lower is easier. */
    FLESCH_KINCAID("flesch-kincaid"),
    /** English, in years of school; aims at texts of 30 sentences. */
    SMOG("smog"),
    /** Spanish, 0 to about 100, higher is easier. */
    FERNANDEZ_HUERTA("fernandez-huerta"),
    /** Spanish, 0 to about 100, higher is easier; 55 to 65 is normal, 65 to 80 fairly easy. */
    INFLESZ("inflesz");

    private final String key;

    Formula(String key) {
        this.key = key;
    }

    /** The score of a text with these counts. */
    public double score(TextCounts counts) {
        return score(counts.words(), counts.sentences(), counts.syllables(), counts.polysyllables());
    }

    /** The score from counts; they need not be whole, so that published averages can be checked. */
    double score(double words, double sentences, double syllables, double polysyllables) {
        Coefficients c = Coefficients.ALL[ordinal()];
        return c.constant
                + c.wordsPerSentence * (words / sentences)
                + c.syllablesPerWord * (syllables / words)
                + c.rootOfPolysyllables * Math.sqrt(polysyllables * 30 / sentences);
    }

    private record Coefficients(
            double constant, double wordsPerSentence, double syllablesPerWord, double rootOfPolysyllables) {
        static final Coefficients[] ALL = load();

        private static Coefficients[] load() {
            var all = new Coefficients[values().length];
            String name = "/slipway/exercises/readability.csv";
            try (var stream = Formula.class.getResourceAsStream(name)) {
                if (stream == null) {
                    throw new IllegalStateException("the program was packaged without " + name);
                }
                for (var row : BundledTable.parseText(new String(stream.readAllBytes(), StandardCharsets.UTF_8))) {
                    for (Formula formula : values()) {
                        if (formula.key.equals(row.get("formula"))) {
                            all[formula.ordinal()] = of(row);
                        }
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException("the bundled table " + name + " cannot be read", e);
            }
            return all;
        }

        private static Coefficients of(CSVRecord row) {
            return new Coefficients(
                    Double.parseDouble(row.get("constant")),
                    Double.parseDouble(row.get("wordsPerSentence")),
                    Double.parseDouble(row.get("syllablesPerWord")),
                    Double.parseDouble(row.get("rootOfPolysyllables")));
        }
    }
}
