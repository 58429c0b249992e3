package slipway.study.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slipway.study.run.Measure;
import slipway.study.statistics.Paired;
import slipway.study.statistics.Spread95;

/** The results as {@code study.csv}: one line for every way, world and measure. Empty where there is no number. */
public final class StudyCsv {
    private static final String HEAD =
            "policy,world,people,measure,mean,meanLow,meanHigh,difference,differenceLow,differenceHigh,ratio,ratioLow,"
                    + "ratioHigh,effectSize\n";

    private StudyCsv() {}

    /** The text of the file. */
    public static String of(StudyResults results) {
        var text = new StringBuilder(HEAD);
        var all = new ArrayList<>(results.single());
        all.addAll(results.plausible());
        for (Result result : all) {
            for (Measure measure : Measure.values()) {
                text.append(line(result, measure));
            }
        }
        return text.toString();
    }

    private static String line(Result result, Measure measure) {
        Paired paired = result.paired(measure);
        var cells = new ArrayList<String>(List.of(
                result.policy(), result.world(), Long.toString(result.tally().people()), measure.words()));
        for (Spread95 spread : new Spread95[] {paired.mean(), paired.difference(), paired.ratio()}) {
            cells.add(number(spread.value()));
            cells.add(number(spread.low()));
            cells.add(number(spread.high()));
        }
        cells.add(number(paired.effectSize()));
        return String.join(",", cells) + "\n";
    }

    private static String number(double value) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, "%.6g", value) : "";
    }
}
