package slipway.app.locate;

import java.util.ArrayList;
import java.util.List;
import slipway.reasoning.screening.Match;
import slipway.reasoning.screening.ScreeningResult;
import slipway.reasoning.screening.ScreeningRules;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A screening as text and as JSON. */
final class ScreeningView {
    private ScreeningView() {}

    static List<String> text(ScreeningResult result) {
        var lines = new ArrayList<String>();
        lines.add("Level: " + result.level().key().toUpperCase(java.util.Locale.ROOT));
        result.actWithin().ifPresent(act -> lines.add("Act within: " + act.key()));
        lines.add("Allowed: " + result.allows().key() + (result.noGlides() ? " (no nerve glides)" : ""));
        for (Match match : result.matched()) {
            String cleared = match.clearance()
                    .map(clearance -> " [cleared by %s on %s: %s]"
                            .formatted(clearance.who(), clearance.when(), clearance.outcome()))
                    .orElse("");
            lines.add("- %s, %s (%s)%s"
                    .formatted(match.rule().level().key(), match.rule().id(), match.because(), cleared));
            lines.add("  " + match.rule().words().tellEn());
            lines.add("  Source: %s (%s)"
                    .formatted(
                            match.rule().basis().source(), match.rule().basis().mark()));
        }
        result.openPoints().forEach(point -> lines.add("- open: " + point));
        if (!result.notAsked().isEmpty()) {
            lines.add("Not asked: " + String.join(", ", result.notAsked()));
        }
        if (!result.listDoseLimits().isEmpty()) {
            lines.add("Changes the dose: " + String.join(", ", result.listDoseLimits()));
        }
        ScreeningRules rules = ScreeningRules.load();
        lines.add(rules.absence().en());
        lines.add(rules.caution().en());
        return lines;
    }

    static String shortly(ScreenedCase screened) {
        var parts = new ArrayList<String>();
        screened.result().listStanding().forEach(match -> parts.add(match.rule().id()));
        screened.notUnderstood().forEach(note -> parts.add("not understood: \"%s\"".formatted(note)));
        return String.join(", ", parts);
    }

    static ObjectNode json(String id, ScreeningResult result) {
        ObjectNode node = JsonMapper.shared().createObjectNode();
        node.put("id", id);
        node.set("screening", json(result));
        return node;
    }

    static ObjectNode json(ScreeningResult result) {
        ObjectNode node = JsonMapper.shared().createObjectNode();
        node.put("level", result.level().key());
        result.actWithin().ifPresent(act -> node.put("actWithin", act.key()));
        node.put("allows", result.allows().key());
        node.put("noGlides", result.noGlides());
        var matched = node.putArray("matched");
        for (Match match : result.matched()) {
            matched.addObject()
                    .put("rule", match.rule().id())
                    .put("level", match.rule().level().key())
                    .put("actWithin", match.rule().action().actWithin().key())
                    .put("because", match.because())
                    .put("cleared", !match.stands());
        }
        var notAsked = node.putArray("notAsked");
        result.notAsked().forEach(notAsked::add);
        var open = node.putArray("open");
        result.openPoints().forEach(open::add);
        return node;
    }
}
