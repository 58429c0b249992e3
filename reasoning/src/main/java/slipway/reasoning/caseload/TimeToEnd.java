package slipway.reasoning.caseload;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Time to discharge when not everybody is discharged yet: the product-limit estimate. Source: Kaplan & Meier 1958, J Am Stat
 * Assoc 53:457. Somebody who is still in care on the day of another's discharge counts as at risk on that day.
 */
public final class TimeToEnd {
    private final List<Step> steps = new ArrayList<>();

    /** Share still in care after a day. */
    public record Step(int day, double inCare, int atRisk, int ended) {}

    private TimeToEnd() {}

    /** Of some episodes. */
    public static TimeToEnd of(List<EpisodeFacts> episodes) {
        var curve = new TimeToEnd();
        var leaving = new TreeMap<Integer, int[]>();
        episodes.forEach(each -> leaving.computeIfAbsent(each.days(), none -> new int[2])[each.discharged() ? 0 : 1]++);
        double inCare = 1;
        int atRisk = episodes.size();
        for (Map.Entry<Integer, int[]> day : leaving.entrySet()) {
            int ended = day.getValue()[0];
            if (ended > 0) {
                inCare *= 1 - (double) ended / atRisk;
                curve.steps.add(new Step(day.getKey(), inCare, atRisk, ended));
            }
            atRisk -= ended + day.getValue()[1];
        }
        return curve;
    }

    public List<Step> steps() {
        return List.copyOf(steps);
    }

    /** The first day by which half or more have ended; empty if that was not reached. */
    public OptionalInt medianDays() {
        return steps.stream()
                .filter(step -> step.inCare() <= 0.5)
                .mapToInt(Step::day)
                .findFirst();
    }
}
