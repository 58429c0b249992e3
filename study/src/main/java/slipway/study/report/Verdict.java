package slipway.study.report;

import java.util.Locale;
import slipway.study.data.Settings;
import slipway.study.run.Measure;
import slipway.study.statistics.Spread95;

/**
 * Whether the program may be the default (over the plausible worlds clearly fewer flares than the main comparator, not later
 * at the goal nor at the full range by a margin, no reported sign of danger missed in any world), and whether the aim that
 * was set beforehand is met: fewer flares by the share in {@code care.csv}, no later at the goal.
 *
 * @param flares ratio of flare days
 * @param goalLater days later at the goal
 * @param rangeLater days later at the full range
 * @param missed over all worlds
 */
public record Verdict(Spread95 flares, Spread95 goalLater, Spread95 rangeLater, long missed) {
    private static final Settings CARE = Settings.load("care.csv");
    private static final double MOST_RATIO = 1 - CARE.value("aim-fewer-flares");
    private static final double MARGIN_DAYS = CARE.value("margin-days");

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

    /** Whether both delays are surely below the margin: not "not shown to be later", which a small study always is. */
    public boolean notLaterByMargin() {
        return goalLater.high() <= MARGIN_DAYS && rangeLater.high() <= MARGIN_DAYS;
    }

    /** Whether flares are surely fewer. */
    public boolean clearlyFewerFlares() {
        return flares.high() < 1;
    }

    /** Whether the program may be the default: fewer flares for sure, not later by the margin, no sign of danger missed. */
    public boolean mayBeDefault() {
        return clearlyFewerFlares() && notLaterByMargin() && missed == 0;
    }

    /** Whether the goal is not reached later by the estimate itself. */
    public boolean noSlower() {
        return goalLater.value() <= 0;
    }

    /** Whether all parts of the aim are met. */
    public boolean met() {
        return fewerFlares() && noSlower() && missed == 0;
    }

    /** In words, with the numbers. */
    public String words() {
        return String.format(
                Locale.ROOT,
                "May be the default: %s. Aim %s. Flare days %.2f times those of the main comparator (95 %% interval %.2f to"
                        + " %.2f; the aim was at most %.2f: %s); at the goal %+.2f days later (%+.2f to %+.2f; the aim was no"
                        + " later: %s) and at the full range %+.2f (%+.2f to %+.2f); the upper ends must be at most %.1f days:"
                        + " %s; %d reported signs of danger missed in all worlds (must be none: %s).",
                mayBeDefault() ? "yes" : "no",
                word(met()),
                flares.value(),
                flares.low(),
                flares.high(),
                MOST_RATIO,
                word(fewerFlares()),
                goalLater.value(),
                goalLater.low(),
                goalLater.high(),
                word(noSlower()),
                rangeLater.value(),
                rangeLater.low(),
                rangeLater.high(),
                MARGIN_DAYS,
                word(notLaterByMargin()),
                missed,
                word(missed == 0));
    }

    private static String word(boolean kept) {
        return kept ? "met" : "missed";
    }
}
