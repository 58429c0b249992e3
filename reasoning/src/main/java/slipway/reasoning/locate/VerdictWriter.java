package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.List;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.locate.Location.RankedSite;
import slipway.reasoning.locate.Location.Verdict;

/** Says in a plain sentence what the ranking means, and what it cannot tell. */
final class VerdictWriter {
    private static final String FIBULAR_NOTE =
            "The fibular division is hit alone or most: the bedside cannot tell a lesion of the"
                    + " sciatic nerve from one at the fibular neck; electromyography of the short head of biceps can.";

    private final LocateModel model;

    VerdictWriter(LocateModel model) {
        this.model = model;
    }

    Verdict write(List<RankedSite> ranked, Locator.Solved solved, List<Finding> unexplained) {
        RankedSite first = ranked.get(0);
        boolean telling = Locator.telling(solved.evidence());
        boolean enough = telling && first.probability() >= model.coefficients().value("enough.probability");
        var notes = new ArrayList<String>();
        if (!telling) {
            notes.add("Nothing that was tested is abnormal, so that no site is called likely.");
        }
        if (onlyFibularDivision(solved)) {
            notes.add(FIBULAR_NOTE);
        }
        if (unexplained.size() > 1) {
            notes.add("No single site explains all findings: think of a second site, a wider lesion, or a slip.");
        }
        return new Verdict(enough, sentence(ranked, enough), notes);
    }

    private static String sentence(List<RankedSite> ranked, boolean enough) {
        RankedSite first = ranked.get(0);
        RankedSite second = ranked.get(1);
        RankedSite third = ranked.get(2);
        if (enough) {
            return "Most likely: %s (%s%s); next %s (%s)."
                    .formatted(
                            first.site().label(),
                            percent(first.probability()),
                            range(first.interval()),
                            second.site().label(),
                            percent(second.probability()));
        }
        return "Not enough to tell: %s (%s), %s (%s) and %s (%s) lead, none of them clearly."
                .formatted(
                        first.site().label(),
                        percent(first.probability()),
                        second.site().label(),
                        percent(second.probability()),
                        third.site().label(),
                        percent(third.probability()));
    }

    /** Whether sciatic sites hold a good share of the chance, mostly with the fibular half worse. */
    private boolean onlyFibularDivision(Locator.Solved solved) {
        double sciatic = 0;
        double fibular = 0;
        double neck = model.findSite("common_fibular_neck")
                .map(site -> solved.chances()[site])
                .orElse(0.0);
        for (Side side : Side.values()) {
            double[] chances = solved.posterior().variants()[side.ordinal()];
            for (int v = 0; v < chances.length; v++) {
                Variant variant = model.variants().get(v);
                if (model.sites().get(variant.site()).kind().equals("sciatic")) {
                    sciatic += chances[v];
                    fibular += fibularWorse(variant) ? chances[v] : 0;
                }
            }
        }
        double plausible = model.coefficients().value("note.plausible");
        return sciatic > plausible && neck > plausible && fibular > 0.4 * sciatic;
    }

    private boolean fibularWorse(Variant variant) {
        List<String> nodes = model.sites().get(variant.site()).nodes();
        return variant.hit().getOrDefault(nodes.get(0), 0.0) > variant.hit().getOrDefault(nodes.get(1), 0.0);
    }

    /** The range in words; nothing if the coefficients were not drawn. */
    private static String range(Location.Interval interval) {
        return interval.low() == interval.high()
                ? ""
                : ", range %s to %s".formatted(percent(interval.low()), percent(interval.high()));
    }

    private static String percent(double probability) {
        return Math.round(100 * probability) + " %";
    }
}
