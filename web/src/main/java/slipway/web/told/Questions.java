package slipway.web.told;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;

/** All questions of the intake, in their order, and their words. */
public final class Questions {
    /** Number of pages. */
    public static final int STEPS = 12;

    private static final List<Question> ALL = read();

    private Questions() {}

    public static List<Question> all() {
        return ALL;
    }

    /** Those of one page. */
    public static List<Question> of(int step) {
        return ALL.stream().filter(question -> question.step() == step).toList();
    }

    public static Optional<Question> find(String id) {
        return ALL.stream().filter(question -> question.id().equals(id)).findFirst();
    }

    /** Their words; in Spanish not yet reviewed by a speaker. */
    public static Words words(Language language) {
        return Words.beside(Questions.class, language);
    }

    private static List<Question> read() {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .get();
        try (var reader = new InputStreamReader(
                        Objects.requireNonNull(Questions.class.getResourceAsStream("questions.csv")),
                        StandardCharsets.UTF_8);
                var lines = format.parse(reader)) {
            return lines.stream()
                    .map(line -> new Question(
                            Integer.parseInt(line.get("step")),
                            line.get("id"),
                            Question.Kind.valueOf(line.get("kind").toUpperCase(Locale.ROOT)),
                            Arrays.stream(line.get("values").split("\\|"))
                                    .filter(value -> !value.isEmpty())
                                    .toList()))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read questions.csv", e);
        }
    }
}
