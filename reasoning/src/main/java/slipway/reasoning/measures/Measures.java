package slipway.reasoning.measures;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.basis.Coefficient;

/** The measures that ship with the program. Safe for use by several threads. */
public final class Measures {
    private static final Measures BUNDLED = new Measures();

    private final Map<String, Measure> byId = new LinkedHashMap<>();
    private final Map<String, Question> questions = new LinkedHashMap<>();

    private Measures() {
        Map<String, Map<String, Coefficient>> thresholds = thresholds();
        for (CSVRecord row : ReasoningData.table("measures/measures.csv")) {
            String id = row.get("id");
            Measure measure = measure(row, new Thresholds(thresholds.getOrDefault(id, Map.of())));
            if (byId.put(id, measure) != null) {
                throw new IllegalStateException("measures.csv: " + id + " is given twice");
            }
        }
        if (!byId.keySet().containsAll(thresholds.keySet())) {
            throw new IllegalStateException("thresholds.csv names a measure that measures.csv does not have");
        }
        for (CSVRecord row : ReasoningData.table("measures/questions.csv")) {
            var question = new Question(row.get("text"), "yes".equals(row.get("reviewed")));
            questions.put(
                    key(get(row.get("measure")).id(), Integer.parseInt(row.get("item")), row.get("language")),
                    question);
        }
    }

    /** The measures of the program. */
    public static Measures bundled() {
        return BUNDLED;
    }

    /**
     * The wording of an item.
     *
     * @param reviewed whether a speaker of the language has read it; if not, whoever hands it out must be told
     */
    public record Question(String text, boolean reviewed) {}

    /** The wording of an item in a language, where nobody owns it; otherwise use the owner's form and its numbers. */
    public Optional<Question> findQuestion(String measureId, int item, String languageCode) {
        return Optional.ofNullable(questions.get(key(measureId, item, languageCode)));
    }

    /** The measure of this id. */
    public Optional<Measure> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The measure of this id, which must exist. */
    public Measure get(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException(
                "a measure must be one of %s, was %s".formatted(String.join(", ", byId.keySet()), id)));
    }

    /** All measures, in the order of the file. */
    public Collection<Measure> list() {
        return Collections.unmodifiableCollection(byId.values());
    }

    private static String key(String measureId, int item, String language) {
        return measureId + " " + item + " " + language;
    }

    private static Map<String, Map<String, Coefficient>> thresholds() {
        var byMeasure = new LinkedHashMap<String, Map<String, Coefficient>>();
        for (CSVRecord row : ReasoningData.table("measures/thresholds.csv")) {
            String quantity = row.get("quantity");
            var read = new Coefficient(quantity, number(row, "value"), "points", row.get("mark"), row.get("source"));
            var ofMeasure = byMeasure.computeIfAbsent(row.get("measure"), none -> new LinkedHashMap<>());
            if (ofMeasure.put(quantity, read) != null) {
                throw new IllegalStateException(
                        "thresholds.csv: %s of %s is given twice".formatted(quantity, row.get("measure")));
            }
        }
        return byMeasure;
    }

    private static Measure measure(CSVRecord row, Thresholds thresholds) {
        return new Measure(
                row.get("id"),
                row.get("name"),
                row.get("about"),
                new Scoring(
                        Formula.valueOf(upper(row, "formula")),
                        Integer.parseInt(row.get("items")),
                        number(row, "itemLow"),
                        number(row, "itemHigh"),
                        Integer.parseInt(row.get("leastAnswered"))),
                new Measure.Range(
                        number(row, "low"), number(row, "high"), Better.valueOf(upper(row, "better")), row.get("unit")),
                thresholds,
                new Measure.Basis(row.get("mark"), row.get("source"), row.get("rights")));
    }

    private static String upper(CSVRecord row, String column) {
        return row.get(column).toUpperCase(java.util.Locale.ROOT);
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
