package slipway.app.locate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slipway.reasoning.locate.NextTest;
import slipway.reasoning.locate.NextTests;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The tests to do next as text and as JSON. */
final class NextTestView {
    /** Half of the last printed digit. */
    private static final double LEAST_SHOWN_BITS = 0.005;

    private NextTestView() {}

    static List<String> text(NextTests.Advice advice) {
        var lines = new ArrayList<String>();
        // A gain that prints as 0.00 is no reason to test anybody.
        List<NextTest> best = advice.best().stream()
                .filter(test -> test.entropyDrop() >= LEAST_SHOWN_BITS)
                .toList();
        lines.add(best.isEmpty() ? "No further bedside test would tell much." : "Would tell most next:");
        for (NextTest test : best) {
            lines.add("- %s of %s, %s (expected gain %.2f bit, effort %.1f min)"
                    .formatted(
                            test.kind().key(),
                            test.item().replace('_', ' '),
                            test.side().name().toLowerCase(Locale.ROOT),
                            test.entropyDrop(),
                            test.effort()));
            for (NextTest.Outcome outcome : test.outcomes()) {
                lines.add("    %s (%.0f %%): %s".formatted(outcome.result(), 100 * outcome.chance(), shifts(outcome)));
            }
        }
        if (!advice.withheld().isEmpty()) {
            lines.add("Held back: " + advice.withheld().size() + " items, for example "
                    + advice.withheld().get(0));
        }
        return lines;
    }

    static void add(ObjectNode node, NextTests.Advice advice) {
        ArrayNode next = node.putArray("next");
        for (NextTest test : advice.best()) {
            ObjectNode each = next.addObject()
                    .put("kind", test.kind().key())
                    .put("item", test.item())
                    .put("side", test.side().name().toLowerCase(Locale.ROOT))
                    .put("entropyDropBits", test.entropyDrop())
                    .put("effortMinutes", test.effort());
            ArrayNode outcomes = each.putArray("outcomes");
            for (NextTest.Outcome outcome : test.outcomes()) {
                ObjectNode result =
                        outcomes.addObject().put("result", outcome.result()).put("chance", outcome.chance());
                ArrayNode sites = result.putArray("sites");
                outcome.sites()
                        .forEach(shift -> sites.addObject()
                                .put("site", shift.site())
                                .put("before", shift.before())
                                .put("after", shift.after()));
            }
        }
        ArrayNode withheld = node.putArray("withheld");
        advice.withheld().forEach(withheld::add);
    }

    private static String shifts(NextTest.Outcome outcome) {
        return String.join(
                ", ",
                outcome.sites().stream()
                        .map(shift ->
                                "%s %.0f to %.0f %%".formatted(shift.site(), 100 * shift.before(), 100 * shift.after()))
                        .toList());
    }
}
