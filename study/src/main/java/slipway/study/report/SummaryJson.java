package slipway.study.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipway.study.run.Measure;
import slipway.study.statistics.Spread95;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The results as {@code summary.json}. What cannot be told, such as a ratio to nothing, is null. */
public final class SummaryJson {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private SummaryJson() {}

    /** The text of the file. */
    public static String of(StudyResults results) {
        var root = new LinkedHashMap<String, Object>();
        root.put("what", "simulated people; not clinical evidence");
        root.put("peoplePerWorld", results.plan().people());
        root.put("days", results.plan().days());
        root.put("seed", results.plan().seed());
        root.put("run", results.plan().fingerprint());
        Verdict verdict = Verdict.of(results);
        // Not Map.of, whose order changes from one start of Java to the next: the same run must give the same bytes.
        var aim = new LinkedHashMap<String, Object>();
        aim.put("met", verdict.met());
        aim.put("words", verdict.words());
        root.put("aim", aim);
        var rows = new ArrayList<Map<String, Object>>();
        results.single().forEach(result -> rows.add(row(result)));
        results.plausible().forEach(result -> rows.add(row(result)));
        root.put("results", rows);
        return MAPPER.writeValueAsString(root) + "\n";
    }

    private static Map<String, Object> row(Result result) {
        var row = new LinkedHashMap<String, Object>();
        row.put("policy", result.policy());
        row.put("world", result.world());
        row.put("people", result.tally().people());
        row.put("flaresPerPerson", result.mean(Measure.FLARE_DAYS).value());
        row.put("daysToFullRange", result.mean(Measure.DAYS_TO_FULL_RANGE).value());
        row.put("daysToGoal", result.mean(Measure.DAYS_TO_GOAL).value());
        row.put("goalShare", result.mean(Measure.GOAL).value());
        row.put("missedSafety", result.missedSafety());
        row.put("dangerSigns", result.tally().sum(result.index(), Measure.EVENTS));
        row.put("daysToAnswer", number(result.daysToAnswer()));
        row.put("repetitionsDone", result.mean(Measure.REPETITIONS).value());
        row.put("doseDelivered", result.mean(Measure.DOSE_PER_MILLE).value() / 1000);
        row.put("intervals", intervals(result));
        return row;
    }

    private static Map<String, Object> intervals(Result result) {
        var all = new LinkedHashMap<String, Object>();
        all.put("flaresPerPerson", ends(result.mean(Measure.FLARE_DAYS)));
        all.put("daysToFullRange", ends(result.mean(Measure.DAYS_TO_FULL_RANGE)));
        all.put("daysToGoal", ends(result.mean(Measure.DAYS_TO_GOAL)));
        all.put("goalShare", ends(result.mean(Measure.GOAL)));
        all.put("flaresDifference", triple(result.paired(Measure.FLARE_DAYS).difference()));
        all.put("flaresRatio", triple(result.paired(Measure.FLARE_DAYS).ratio()));
        all.put("flaresEffectSize", result.paired(Measure.FLARE_DAYS).effectSize());
        all.put(
                "daysToFullRangeDifference",
                triple(result.paired(Measure.DAYS_TO_FULL_RANGE).difference()));
        all.put(
                "daysToGoalDifference",
                triple(result.paired(Measure.DAYS_TO_GOAL).difference()));
        all.put("goalShareDifference", triple(result.paired(Measure.GOAL).difference()));
        return all;
    }

    private static List<Object> ends(Spread95 spread) {
        return List.of(spread.low(), spread.high());
    }

    private static List<Object> triple(Spread95 spread) {
        var values = new ArrayList<Object>();
        for (double value : new double[] {spread.value(), spread.low(), spread.high()}) {
            values.add(number(value));
        }
        return values;
    }

    /** JSON has no word for "not a number" but null; Jackson's own null node stands for it. */
    private static Object number(double value) {
        return Double.isFinite(value) ? value : tools.jackson.databind.node.NullNode.getInstance();
    }
}
