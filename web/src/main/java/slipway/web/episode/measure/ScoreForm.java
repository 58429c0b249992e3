package slipway.web.episode.measure;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import slipway.documents.words.Words;
import slipway.exercises.yaml.Mistake;
import slipway.reasoning.measures.Measure;
import slipway.reasoning.measures.Measures;
import slipway.reasoning.measures.Score;
import slipway.web.form.FormReader;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The form of a score: a total, or the answers one after the other.
 *
 * @param answers numbers with spaces between them, a hyphen for an item that was not answered
 */
record ScoreForm(String measure, String day, String total, String answers) {
    ScoreForm(@Nullable String measure, @Nullable String day, @Nullable String total, @Nullable String answers) {
        this.measure = FormReader.text(measure).strip();
        this.day = FormReader.text(day).strip();
        this.total = FormReader.text(total).strip();
        this.answers = FormReader.text(answers).strip();
    }

    /** What came of reading: a body to keep, or everything that is wrong. */
    record Reading(Optional<LocalDate> day, ObjectNode body, List<Mistake> mistakes) {}

    /** The fields, for showing them again. */
    ObjectNode fields() {
        ObjectNode fields = JsonMapper.shared().createObjectNode();
        fields.putObject("score")
                .put("measure", measure)
                .put("day", day)
                .put("total", total)
                .put("answers", answers);
        return fields;
    }

    Reading read(LocalDate today, Words words) {
        var mistakes = new ArrayList<Mistake>();
        ObjectNode body = JsonMapper.shared().createObjectNode();
        Optional<Measure> known = Measures.bundled().find(measure);
        if (known.isEmpty()) {
            mistakes.add(mistake("measure", words.get("wrong.measure")));
        }
        Optional<LocalDate> when = day(today, words, mistakes);
        if (total.isEmpty() == answers.isEmpty()) {
            mistakes.add(mistake("total", words.get("wrong.either")));
        } else if (known.isPresent()) {
            if (total.isEmpty()) {
                answers(known.get(), body, words, mistakes);
            } else {
                total(known.get(), body, words, mistakes);
            }
        }
        return new Reading(when, body, mistakes);
    }

    private Optional<LocalDate> day(LocalDate today, Words words, List<Mistake> mistakes) {
        try {
            LocalDate when = day.isEmpty() ? today : LocalDate.parse(day);
            if (!when.isAfter(today) && when.isAfter(today.minusYears(20))) {
                return Optional.of(when);
            }
        } catch (DateTimeParseException e) {
            // Said below, the same as for a day that cannot be.
        }
        mistakes.add(mistake("day", words.get("wrong.day", day)));
        return Optional.empty();
    }

    private void total(Measure measure, ObjectNode body, Words words, List<Mistake> mistakes) {
        OptionalDouble value = number(total);
        if (value.isEmpty() || !measure.range().holds(value.getAsDouble())) {
            mistakes.add(mistake(
                    "total",
                    words.get(
                            "wrong.total",
                            measure.text(measure.range().low()),
                            measure.text(measure.range().high()),
                            total)));
        } else {
            body.put("total", value.getAsDouble());
        }
    }

    private void answers(Measure measure, ObjectNode body, Words words, List<Mistake> mistakes) {
        var read = new TreeMap<Integer, Double>();
        String[] parts = answers.split("[\\s,;]+", -1);
        for (int i = 0; i < parts.length; i++) {
            if (!parts[i].equals("-")) {
                OptionalDouble value = number(parts[i]);
                if (value.isEmpty()) {
                    mistakes.add(mistake("answers", words.get("wrong.answer", i + 1, parts[i])));
                    return;
                }
                read.put(i + 1, value.getAsDouble());
            }
        }
        if (parts.length > measure.scoring().items()) {
            mistakes.add(mistake(
                    "answers", words.get("wrong.items", measure.scoring().items(), parts.length)));
        } else if (measure.score(read) instanceof Score.NotScored none) {
            none.reasons().forEach(reason -> mistakes.add(mistake("answers", reason)));
        } else {
            ObjectNode kept = body.putObject("answers");
            read.forEach((item, value) -> kept.put(String.valueOf(item), value));
        }
    }

    private static OptionalDouble number(String text) {
        try {
            double value = Double.parseDouble(text.replace(',', '.'));
            return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    private static Mistake mistake(String field, String message) {
        return new Mistake(0, 0, "score." + field, message);
    }
}
