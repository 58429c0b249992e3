package slipway.web.episode.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import slipway.care.record.chart.Chart;
import slipway.care.record.follow.MeasureEntry;
import slipway.reasoning.course.Dated;
import slipway.reasoning.course.Series;
import slipway.reasoning.measures.Measure;
import slipway.reasoning.measures.Measures;
import tools.jackson.databind.JsonNode;

/** The scores of a chart. */
final class Scores {
    private Scores() {}

    /**
     * One score as it was entered.
     *
     * @param score empty if too few items were answered
     */
    record Entered(String id, LocalDate day, Measure measure, OptionalDouble score) {}

    /** All entries whose measure is known, by day. */
    static List<Entered> of(Chart chart) {
        return chart.measures().list().stream()
                .flatMap(entry -> Measures.bundled()
                        .find(entry.measureId())
                        .map(measure -> new Entered(entry.id(), entry.day(), measure, score(measure, entry)))
                        .stream())
                .toList();
    }

    /** The scores of each measure. */
    static List<Series> series(Chart chart) {
        Map<Measure, List<Dated>> byMeasure = new LinkedHashMap<>();
        for (Entered entered : of(chart)) {
            entered.score()
                    .ifPresent(score -> byMeasure
                            .computeIfAbsent(entered.measure(), none -> new ArrayList<>())
                            .add(new Dated(entered.day(), score)));
        }
        return byMeasure.entrySet().stream()
                .map(entry -> new Series(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** The latest score of a measure. */
    static Optional<Dated> latest(Chart chart, String measureId) {
        return series(chart).stream()
                .filter(series -> series.measure().id().equals(measureId))
                .flatMap(series -> series.last().stream())
                .findFirst();
    }

    private static OptionalDouble score(Measure measure, MeasureEntry entry) {
        JsonNode total = entry.body().path("total");
        if (total.isNumber()) {
            return OptionalDouble.of(total.asDouble());
        }
        var answers = new TreeMap<Integer, Double>();
        entry.body()
                .path("answers")
                .properties()
                .forEach(each -> answers.put(
                        Integer.valueOf(each.getKey()), each.getValue().asDouble()));
        return answers.isEmpty()
                ? OptionalDouble.empty()
                : measure.score(answers).find();
    }
}
