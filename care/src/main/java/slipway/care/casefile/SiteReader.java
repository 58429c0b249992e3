package slipway.care.casefile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import slipway.mechanics.nerve.Site;

/** Reads the suspected places. */
final class SiteReader {
    /** How far the weights may be from 1 in sum, so that three times 0.33 passes. */
    private static final double SUM_TOLERANCE = 0.0101;

    private SiteReader() {}

    static List<SiteWeight> read(Fields root, Report report) {
        var sites = new ArrayList<SiteWeight>();
        var firstOf = new HashMap<String, Fields>();
        double sum = 0;
        for (Fields entry : root.list("sites")) {
            String name = entry.findText("site").orElse("");
            double probability = entry.findNumber("probability").orElse(0);
            Fields first = firstOf.putIfAbsent(name, entry);
            if (first != null && !name.isEmpty()) {
                report.add(entry, "names the same site as on %s, \"%s\"".formatted(report.lineOf(first), name));
            }
            sum += probability;
            sites.add(new SiteWeight(
                    name, Site.find(name), probability, entry.findText("reason").orElse("")));
        }
        if (!sites.isEmpty() && !(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
            report.add(
                    root.child("sites"),
                    String.format(Locale.ROOT, "probabilities must sum to 1, summed to %.3f", sum));
        }
        return sites;
    }
}
