package slipway.reasoning.caseload;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.measures.Change;

/**
 * The figures of a caseload.
 *
 * @param measures by id of the measure
 * @param groups share better by more than error on a chosen measure, and where that stands; groups that are too small are
 *     missing, not merged; none at all if what is missing could be found by taking the shown ones from the whole
 */
public record CaseloadReport(
        int episodes,
        Map<String, Shown<OfMeasure>> measures,
        Shown<Quartiles> reportedDays,
        Shown<OptionalInt> medianDaysToDischarge,
        Shown<Shown.Share> stalled,
        Map<String, Group> groups) {

    /** Gains on one measure, and how many were more than error. */
    public record OfMeasure(Quartiles gain, Shown<Shown.Share> better, Shown<Shown.Share> important) {}

    /** A group against all. */
    public record Group(Shown.Share better, Funnel.Place place) {}

    /** 25, 50 and 75 % points, interpolated (Hyndman & Fan 1996, type 7). */
    public record Quartiles(double lower, double middle, double upper) {
        static Quartiles of(double[] values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            return new Quartiles(at(sorted, 0.25), at(sorted, 0.5), at(sorted, 0.75));
        }

        private static double at(double[] sorted, double share) {
            double place = share * (sorted.length - 1);
            int below = (int) Math.floor(place);
            int above = Math.min(below + 1, sorted.length - 1);
            return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
        }
    }

    public CaseloadReport {
        measures = Map.copyOf(measures);
        groups = Map.copyOf(groups);
    }

    /** How many months back episodes were opened that count, where nobody asks for others. */
    public static int windowMonths() {
        return (int) Coefficients.load("caseload.csv").value("window-months");
    }

    /**
     * The figures of some episodes.
     *
     * @param funnelMeasure id of the measure on which groups are compared
     */
    public static CaseloadReport of(List<EpisodeFacts> episodes, String funnelMeasure) {
        double[] reportedDays = episodes.stream()
                .filter(each -> each.reportedDays().isPresent())
                .mapToDouble(each -> each.reportedDays().getAsDouble())
                .toArray();
        List<Boolean> stalled =
                episodes.stream().flatMap(each -> each.stalled().stream()).toList();
        return new CaseloadReport(
                episodes.size(),
                measures(episodes),
                Shown.of(reportedDays.length, () -> Quartiles.of(reportedDays)),
                Shown.of(episodes.size(), () -> TimeToEnd.of(episodes).medianDays()),
                Shown.share((int) stalled.stream().filter(each -> each).count(), stalled.size()),
                groups(episodes, funnelMeasure));
    }

    /** The measure with most changes; of several the first by id; empty if there are none. */
    public static String mostTaken(List<EpisodeFacts> episodes) {
        var counts = new TreeMap<String, Integer>();
        episodes.forEach(each -> each.changes().keySet().forEach(id -> counts.merge(id, 1, Integer::sum)));
        return counts.entrySet().stream()
                .min(Comparator.comparing((Map.Entry<String, Integer> each) -> -each.getValue()))
                .map(Map.Entry::getKey)
                .orElse("");
    }

    private static Map<String, Shown<OfMeasure>> measures(List<EpisodeFacts> episodes) {
        var byMeasure = new TreeMap<String, List<Change>>();
        episodes.forEach(each -> each.changes()
                .forEach((id, change) -> byMeasure
                        .computeIfAbsent(id, none -> new java.util.ArrayList<>())
                        .add(change)));
        var shown = new LinkedHashMap<String, Shown<OfMeasure>>();
        byMeasure.forEach((id, changes) -> shown.put(id, Shown.of(changes.size(), () -> measure(changes))));
        return shown;
    }

    private static OfMeasure measure(List<Change> changes) {
        int better = (int) changes.stream().filter(Change::better).count();
        int important = (int) changes.stream()
                .filter(each -> each.better() && each.kind() == Change.Kind.IMPORTANT)
                .count();
        return new OfMeasure(
                Quartiles.of(changes.stream().mapToDouble(Change::gain).toArray()),
                Shown.share(better, changes.size()),
                Shown.share(important, changes.size()));
    }

    private static Map<String, Group> groups(List<EpisodeFacts> episodes, String measure) {
        var counts = new TreeMap<String, int[]>();
        for (EpisodeFacts each : episodes) {
            Change change = each.changes().get(measure);
            if (change != null) {
                int[] count = counts.computeIfAbsent(each.group(), none -> new int[2]);
                count[0] += change.better() ? 1 : 0;
                count[1]++;
            }
        }
        int better = counts.values().stream().mapToInt(c -> c[0]).sum();
        int all = counts.values().stream().mapToInt(c -> c[1]).sum();
        // The target is the share of all: where it is hidden, nothing may stand against it.
        if (better == 0 || better == all || Shown.share(better, all) instanceof Shown.TooFew<?>) {
            return Map.of();
        }
        double target = (double) better / all;
        var groups = new LinkedHashMap<String, Group>();
        counts.forEach((name, count) -> {
            if (Shown.share(count[0], count[1]) instanceof Shown.Figure<Shown.Share> share) {
                groups.put(name, new Group(share.value(), Funnel.place(target, share.value())));
            }
        });
        return restIsHidden(groups, better, all) ? groups : Map.of();
    }

    /** Whether those in the missing groups are nobody, or enough together: the whole is shown beside the groups. */
    private static boolean restIsHidden(Map<String, Group> groups, int better, int all) {
        int shownBetter =
                groups.values().stream().mapToInt(each -> each.better().count()).sum();
        int shown =
                groups.values().stream().mapToInt(each -> each.better().of()).sum();
        return shown == all || Shown.share(better - shownBetter, all - shown) instanceof Shown.Figure<?>;
    }
}
