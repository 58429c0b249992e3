package slipway.app.nerve;

import java.util.Locale;
import slipway.care.bench.PostureReading;
import slipway.care.bench.PostureReading.AtSite;
import slipway.care.bench.Spread;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A posture reading as text and as JSON. */
final class PostureText {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    /** Said wherever numbers of the front of the leg are shown. */
    static final String UNVALIDATED =
            "NOT VALIDATED: hardly anything is published about how the nerves at the front of the leg move."
                    + "\nThe numbers follow from stated geometry and from what was fitted to the back of the leg.";

    private PostureText() {}

    static String text(PostureReading reading) {
        var out = new StringBuilder();
        out.append("posture  ").append(reading.posture()).append('\n');
        out.append("from     ").append(reading.from()).append('\n');
        out.append("tract    ").append(reading.tract().key()).append("\n\n");
        out.append(reading.validated() ? "" : UNVALIDATED + "\n\n");
        out.append(String.format(
                Locale.ROOT,
                "%-30s %-22s %-24s %8s   %s%n",
                "site",
                "strain, %",
                "glide, mm (+ distal)",
                "tension",
                "load, %"));
        for (AtSite site : reading.sites()) {
            out.append(String.format(
                    Locale.ROOT,
                    "%-30s %-22s %-24s %8.4f   %s%n",
                    site.site(),
                    spread(site.strainPct()),
                    spread(site.glideMm()) + (site.glideMm().signUnsure() ? " ?" : ""),
                    site.relativeTension(),
                    spread(site.loadPct())));
        }
        out.append(String.format(
                Locale.ROOT,
                "%nmean positive strain along the tract %s %%%n",
                spread(reading.meanPositiveStrainPct())));
        out.append(String.format(
                Locale.ROOT,
                "Median and 90 %% of the draws. Load is %.0f %% strain at the site and %.0f %% mean positive strain.%n",
                100 * (1 - PostureReading.spreadShown()),
                100 * PostureReading.spreadShown()));
        if (reading.sites().stream().anyMatch(site -> site.glideMm().signUnsure())) {
            out.append("? The draws do not agree which way the nerve slides there: read it as \"not known\".\n");
        }
        out.append("Tension is relative to the stiffness of the sciatic nerve at mid-thigh, above lying straight.\n");
        if (!reading.notModelled().isEmpty()) {
            out.append("Not modelled, and left out: ")
                    .append(String.join(", ", reading.notModelled()))
                    .append(".\n");
        }
        return out.toString();
    }

    static String json(PostureReading reading) {
        return MAPPER.writeValueAsString(tree(reading)) + "\n";
    }

    /** Two readings as {@code a} and {@code b}. */
    static String json(PostureReading one, PostureReading other) {
        ObjectNode root = MAPPER.createObjectNode();
        root.set("a", tree(one));
        root.set("b", tree(other));
        return MAPPER.writeValueAsString(root) + "\n";
    }

    private static ObjectNode tree(PostureReading reading) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("posture", reading.posture().text());
        root.put("from", reading.from().text());
        root.put("tract", reading.tract().key());
        root.put("validated", reading.validated());
        root.set("sites", MAPPER.valueToTree(reading.sites()));
        root.set("meanPositiveStrainPct", MAPPER.valueToTree(reading.meanPositiveStrainPct()));
        root.put("spreadShown", PostureReading.spreadShown());
        root.set("notModelled", MAPPER.valueToTree(reading.notModelled()));
        return root;
    }

    private static String spread(Spread spread) {
        return String.format(
                Locale.ROOT, "%.1f (%.1f to %.1f)", shown(spread.median()), shown(spread.low()), shown(spread.high()));
    }

    /** One decimal, and no minus before a zero. */
    private static double shown(double value) {
        return Math.rint(value * 10) / 10 + 0.0;
    }
}
