package slipway.app.locate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slipway.care.reports.PublishedCase;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.locate.Location;
import slipway.reasoning.locate.Location.RankedSite;
import slipway.reasoning.locate.Location.Reason;
import slipway.reasoning.screening.ScreeningResult;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** An answer of the locator as text and as JSON. */
final class LocationView {
    private static final int SHOWN_SITES = 6;
    private static final int SHOWN_REASONS = 4;
    /** A finding that changes the odds by less than a tenth is no reason. */
    private static final double NO_REASON = 0.1;

    private LocationView() {}

    static ObjectNode json(String id, ScreeningResult screening, Location location) {
        ObjectNode node = JsonMapper.shared().createObjectNode();
        node.put("id", id);
        node.set("screening", ScreeningView.json(screening));
        ArrayNode sites = node.putArray("sites");
        location.scored()
                .forEach(site ->
                        sites.addObject().put("site", site.site()).put("probability", rounded(site.probability())));
        ArrayNode detailed = node.putArray("sitesDetailed");
        location.sites().forEach(site -> detailed.add(json(site)));
        node.putObject("side")
                .put("left", rounded(location.side().left()))
                .put("right", rounded(location.side().right()));
        ObjectNode pairs = node.putObject("pairs")
                .put("probability", rounded(location.pairs().chance()));
        ArrayNode likeliest = pairs.putArray("likeliest");
        location.pairs()
                .likeliest()
                .forEach(pair -> likeliest
                        .addObject()
                        .put("first", pair.first())
                        .put("second", pair.second())
                        .put("probability", rounded(pair.probability())));
        ArrayNode unexplained = node.putArray("unexplained");
        location.unexplained().forEach(finding -> unexplained.add(placed(finding)));
        ArrayNode notUsed = node.putArray("notUsed");
        location.notUsed().forEach(each -> notUsed.add(placed(each.finding()) + ": " + each.reason()));
        node.put("enough", location.verdict().enough());
        node.put("sentence", location.verdict().sentence());
        ArrayNode notes = node.putArray("notes");
        location.verdict().notes().forEach(notes::add);
        return node;
    }

    /** Adds what the reader of the list and the screening could not use. */
    static void addNotUsed(ObjectNode node, PublishedCase published, ScreenedCase screened) {
        ArrayNode notUsed = (ArrayNode) node.get("notUsed");
        published.notUsed().forEach(notUsed::add);
        screened.notUnderstood().forEach(note -> notUsed.add("red flag not understood: " + note));
    }

    static List<String> text(ScreeningResult screening, Location location) {
        var lines = new ArrayList<String>();
        lines.add("Screening: " + screening.level().key()
                + (screening.level().blocksPlan()
                        ? " ('slipway screen' says why; it comes before everything below)"
                        : ""));
        lines.add(location.verdict().sentence());
        location.verdict().notes().forEach(note -> lines.add("Note: " + note));
        lines.add("");
        for (RankedSite site : location.sites()
                .subList(0, Math.min(SHOWN_SITES, location.sites().size()))) {
            lines.add("%5.1f %%  (%.0f to %.0f %%)  %s"
                    .formatted(
                            100 * site.probability(),
                            100 * site.interval().low(),
                            100 * site.interval().high(),
                            site.site().label()));
            addReasons(lines, "for", site.reasons(), true);
            addReasons(lines, "against", site.reasons(), false);
        }
        lines.add("");
        location.unexplained().forEach(finding -> lines.add("Unexplained by the first: " + placed(finding)));
        location.notUsed()
                .forEach(each -> lines.add("Not used: " + placed(each.finding()) + " (" + each.reason() + ")"));
        lines.add("Not a diagnosis. Chances hold for the setting they were set for; the therapist decides.");
        return lines;
    }

    static String line(PublishedCase published, ScreenedCase screened, Location location) {
        String first = location.scored().stream()
                .limit(3)
                .map(site -> "%s %.0f %%".formatted(site.site(), 100 * site.probability()))
                .collect(Collectors.joining(", "));
        return "%-10s %-10s %s%s"
                .formatted(
                        published.id(),
                        screened.result().level().key(),
                        first,
                        location.verdict().enough() ? "" : "  (not enough to tell)");
    }

    private static void addReasons(List<String> lines, String word, List<Reason> reasons, boolean speaksFor) {
        String text = reasons.stream()
                .filter(reason -> Math.abs(reason.ratio() - 1) > NO_REASON && reason.ratio() > 1 == speaksFor)
                .limit(SHOWN_REASONS)
                .map(reason -> "%s (x %.2g)".formatted(reason.finding(), reason.ratio()))
                .collect(Collectors.joining("; "));
        if (!text.isEmpty()) {
            lines.add("          %s: %s".formatted(word, text));
        }
    }

    private static ObjectNode json(RankedSite site) {
        ObjectNode node = JsonMapper.shared()
                .createObjectNode()
                .put("site", site.site().name())
                .put("scoredAs", site.site().scored())
                .put("probability", rounded(site.probability()))
                .put("low", rounded(site.interval().low()))
                .put("high", rounded(site.interval().high()));
        ArrayNode reasons = node.putArray("reasons");
        site.reasons().stream()
                .filter(reason -> Math.abs(reason.ratio() - 1) > NO_REASON)
                .limit(2L * SHOWN_REASONS)
                .forEach(reason ->
                        reasons.addObject().put("finding", reason.finding()).put("oddsTimes", rounded(reason.ratio())));
        return node;
    }

    private static String placed(Finding finding) {
        return finding.location().isEmpty() ? finding.text() : "%s (%s)".formatted(finding.text(), finding.location());
    }

    /** Six digits are more than anyone reads; the sum stays 1 within a few millionths. */
    private static double rounded(double value) {
        return Math.round(value * 1e6) / 1e6;
    }
}
