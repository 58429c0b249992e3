package slipway.reasoning.screening;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.screening.ScreeningRules.Bilingual;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Reads the bundled rules; a mistake in them is a mistake of the program. */
final class RulesReader {
    private RulesReader() {}

    static ScreeningRules read(String name) {
        JsonNode file = new YAMLMapper().readTree(ReasoningData.text(name));
        var rules = new ArrayList<ScreeningRule>();
        file.path("rules").forEach(node -> rules.add(rule(node)));
        var items = new ArrayList<Wells.Item>();
        file.path("wells")
                .path("items")
                .forEach(node -> items.add(new Wells.Item(
                        text(node, "id"),
                        node.path("points").asInt(),
                        node.path("needsReason").asBoolean(false),
                        text(node, "en"))));
        Wells wells = new Wells(items, file.path("wells").path("likelyFrom").asInt());
        return new ScreeningRules(rules, wells, bilingual(file.path("caution")), bilingual(file.path("absence")));
    }

    private static ScreeningRule rule(JsonNode node) {
        boolean noGlides = text(node, "level").equals("noGlides");
        return new ScreeningRule(
                text(node, "id"),
                trigger(node),
                noGlides ? Level.CAUTION : Level.valueOf(text(node, "level").toUpperCase(Locale.ROOT)),
                new ScreeningRule.Action(actWithin(text(node, "actWithin")), allows(text(node, "allows"))),
                node.path("fixed").asBoolean(false),
                strings(node.path("dose")),
                new Words(
                        node.path("en").path("ask").asString(""),
                        text(node.path("en"), "tell"),
                        node.path("es").path("ask").asString(""),
                        text(node.path("es"), "tell")),
                new ScreeningRule.Basis(text(node, "source"), text(node, "mark")));
    }

    private static Trigger trigger(JsonNode node) {
        return switch (text(node, "trigger")) {
            case "question" ->
                new Trigger.Question(
                        Region.valueOf(node.path("region").asString("any").toUpperCase(Locale.ROOT)));
            case "sign" -> sign(node.path("when"));
            case "cluster" -> new Trigger.Cluster(node.path("atLeast").asInt(), strings(node.path("of")));
            case "age" ->
                new Trigger.Age(
                        node.path("youngerThanYears").asInt(),
                        node.path("olderThanYears").asInt());
            case "score" -> new Trigger.Wells(text(node, "level").equals("urgent"));
            case "cleared" -> new Trigger.Cleared();
            default -> throw new IllegalStateException("rules.yaml: unknown trigger of " + text(node, "id"));
        };
    }

    private static Trigger.Sign sign(JsonNode when) {
        String kind = text(when, "kind");
        Optional<FindingKind> known = FindingKind.find(kind);
        if (known.isEmpty() && !kind.equals("any")) {
            throw new IllegalStateException("rules.yaml: unknown kind " + kind);
        }
        return new Trigger.Sign(
                known,
                new HashSet<>(strings(when.path("targets"))),
                when.path("gradeAtMost").asDouble(5),
                when.path("bothSides").asBoolean(false),
                when.path("ungradedCounts").asBoolean(false));
    }

    private static ActWithin actWithin(String key) {
        for (ActWithin value : ActWithin.values()) {
            if (value.key().equals(key)) {
                return value;
            }
        }
        throw new IllegalStateException("rules.yaml: unknown actWithin " + key);
    }

    private static Allows allows(String key) {
        for (Allows value : Allows.values()) {
            if (value.key().equals(key)) {
                return value;
            }
        }
        throw new IllegalStateException("rules.yaml: unknown allows " + key);
    }

    private static Bilingual bilingual(JsonNode node) {
        return new Bilingual(text(node, "en"), text(node, "es"));
    }

    private static List<String> strings(JsonNode array) {
        var strings = new ArrayList<String>();
        array.forEach(element -> strings.add(element.asString()));
        return strings;
    }

    private static String text(JsonNode node, String key) {
        String text = node.path(key).asString("").strip();
        if (text.isEmpty()) {
            throw new IllegalStateException("rules.yaml: %s is missing in %s".formatted(key, node.path("id")));
        }
        return text;
    }
}
