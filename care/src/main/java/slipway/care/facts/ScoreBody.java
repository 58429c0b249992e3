package slipway.care.facts;

import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.TreeMap;
import slipway.reasoning.measures.Measure;
import tools.jackson.databind.JsonNode;

/** The body of an entry of a measure: {@code total}, or {@code answers} by number of the item. */
final class ScoreBody {
    private ScoreBody() {}

    /**
     * The measure as it was taken.
     *
     * @throws IllegalArgumentException if the body is not understood
     */
    static Taken read(Measure measure, LocalDate day, JsonNode body) {
        JsonNode total = body.path("total");
        var answers = new TreeMap<Integer, Double>();
        body.path("answers")
                .propertyStream()
                .forEach(answer -> answers.put(
                        Integer.parseInt(answer.getKey()), answer.getValue().doubleValue()));
        return new Taken(
                measure,
                day,
                total.isNumber() ? OptionalDouble.of(total.doubleValue()) : OptionalDouble.empty(),
                answers);
    }
}
