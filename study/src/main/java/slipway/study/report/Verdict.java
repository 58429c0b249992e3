package slipway.study.report;

import java.util.Locale;
import slipway.study.data.Settings;
import slipway.study.run.Measure;
import slipway.study.statistics.Spread95;

/**
 * Whether the aim that was set beforehand is met: over the plausible worlds fewer flares than the main comparator by the
 * share in {@code care.csv}, no later at the goal nor at the full range, and no reported sign of danger missed in any world.
 *
 * @param flares ratio of flare days
 * @param goalLater days later at the goal
 * @param rangeLater days later at the full range
 * @param missed over all worlds
 */
public record Verdict(Spread95 flares, Spread95 goalLater, Spread95 rangeLater, long missed) {
    private static final double MOST_RATIO = 1 - Settings.load("care.csv").value("aim-fewer-flares");

    /** The verdict of a study. */
    public static Verdict of(StudyResults results) {
        Result program = results.get(StudyResults.PROGRAM, StudyResults.ALL_PLAUSIBLE);
        long missed = results.single().stream()
                .filter(result -> result.policy().equals(StudyResults.PROGRAM))
                .mapToLong(Result::missedSafety)
                .sum();
        return new Verdict(
                program.paired(Measure.FLARE_DAYS).ratio(),
                program.paired(Measure.DAYS_TO_GOAL).difference(),
                program.paired(Measure.DAYS_TO_FULL_RANGE).difference(),
                missed);
    }

    /** Whether flares are few enough by the estimate itself. */
    public boolean fewerFlares() {
        return flares.value() <= MOST_RATIO;
    }

    /** Whether the intervals of both delays reach down to none. */
    public boolean noLater() {
        return goalLater.low() <= 0 && rangeLater.low() <= 0;
    }

    /** Whether all parts of the aim are met. */
    public boolean met() {
        return fewerFlares() && noLater() && missed == 0;
    }

    /** In words, with the numbers. */
    public String words() {
        return String.format(
                Locale.ROOT,
                "Aim %s: flare days %.2f times those of the main comparator (95 %% interval %.2f to %.2f; at most %.2f was"
                        + " the aim: %s); at the goal %+.2f days later (%+.2f to %+.2f) and at the full range %+.2f (%+.2f to"
                        + " %+.2f; no later was the aim: %s);"
                        + " %d reported signs of danger missed in all worlds (none was the aim: %s).",
                met() ? "met" : "missed",
                flares.value(),
                flares.low(),
                flares.high(),
                MOST_RATIO,
                word(fewerFlares()),
                goalLater.value(),
                goalLater.low(),
                goalLater.high(),
                rangeLater.value(),
                rangeLater.low(),
                rangeLater.high(),
                word(noLater()),
                missed,
                word(missed == 0));
    }

    private static String word(boolean kept) {
        return kept ? "met" : "missed";
    }
}
