package slipway.reasoning.course;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import slipway.reasoning.measures.Change;

/**
 * Standing still. One measure alone is no stall: it takes two, and a goal that is not met.
 *
 * @param stalled whether the care stands still
 * @param still names of the measures that stand still
 * @param text why, or why not
 */
public record Stall(boolean stalled, List<String> still, String text) {
    public Stall {
        still = List.copyOf(still);
    }

    /** What can be said of one measure. */
    public enum Verdict {
        STILL,
        MOVING,
        /** It cannot get better than it is. */
        AT_ITS_BEST,
        /** Too few scores, too near to each other, or no published error. */
        NOT_KNOWN
    }

    /** Days back over which standing still is judged. */
    public static int days() {
        return CourseData.weeksAsDays("stall-weeks");
    }

    /** How many measures must stand still; fewer that can be judged say nothing. */
    public static int measures() {
        return CourseData.whole("stall-measures");
    }

    /** Whether one measure stood still over the last weeks before a day. */
    static Verdict of(Series whole, LocalDate asOf) {
        Series lately = whole.upTo(asOf).from(asOf.minusDays(days()));
        if (lately.change().isEmpty() || span(lately) < CourseData.whole("stall-span-days")) {
            return Verdict.NOT_KNOWN;
        }
        if (best(lately)) {
            return Verdict.AT_ITS_BEST;
        }
        Change change = lately.change().get();
        if (change.kind() == Change.Kind.NOT_KNOWN) {
            return Verdict.NOT_KNOWN;
        }
        return change.better() ? Verdict.MOVING : Verdict.STILL;
    }

    /** Whether the care as a whole stands still. */
    static Stall of(List<MeasureCourse> measures, List<Outlook> goals) {
        List<String> still = measures.stream()
                .filter(each -> each.stall() == Verdict.STILL)
                .map(each -> each.measure().name())
                .toList();
        boolean there = !goals.isEmpty() && goals.stream().allMatch(goal -> goal.state() == Outlook.State.MET);
        boolean enough = still.size() >= measures();
        return new Stall(enough && !there, still, text(still, enough, there));
    }

    private static String text(List<String> still, boolean enough, boolean there) {
        if (!enough) {
            return still.isEmpty()
                    ? "No measure is known to stand still."
                    : "Only %s stands still: one measure alone is no stall.".formatted(still.get(0));
        }
        return there
                ? "%s stand still, and the goals are met.".formatted(String.join(" and ", still))
                : "Stalled: %s stand still over the last %d weeks and the goal is not met."
                        .formatted(String.join(" and ", still), CourseData.whole("stall-weeks"));
    }

    private static long span(Series lately) {
        return ChronoUnit.DAYS.between(
                lately.scores().get(0).day(),
                lately.scores().get(lately.scores().size() - 1).day());
    }

    private static boolean best(Series lately) {
        var range = lately.measure().range();
        double end = range.better().gain(0, 1) > 0 ? range.high() : range.low();
        double good = lately.measure()
                .thresholds()
                .recovered()
                .map(row -> row.value())
                .orElse(end);
        return lately.last()
                .filter(last -> range.better().atLeastAsGood(last.score(), good))
                .isPresent();
    }
}
