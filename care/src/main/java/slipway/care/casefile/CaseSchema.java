package slipway.care.casefile;

import java.util.Collection;
import slipway.care.CareData;
import slipway.mechanics.body.Position;
import slipway.reasoning.screening.Region;
import slipway.reasoning.screening.ScreeningRule;
import slipway.reasoning.screening.ScreeningRules;
import slipway.reasoning.screening.Wells;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The JSON schema of case files (draft 2020-12). The words that come from the program's data (positions, tests, places,
 * safety questions) are put in here, so that the schema that {@code slipway schema case} prints cannot fall behind.
 */
public final class CaseSchema {
    private static final ObjectNode SCHEMA = assemble();

    private CaseSchema() {}

    /** The schema as JSON text. */
    public static String text() {
        return SCHEMA.toPrettyString() + "\n";
    }

    static ObjectNode node() {
        return SCHEMA;
    }

    private static ObjectNode assemble() {
        var schema = (ObjectNode) JsonMapper.shared().readTree(CareData.text("schema/case.schema.json"));
        words(schema, "/$defs/position", Position.all().keySet());
        words(schema, "/properties/tests/items/properties/test", TestKind.all().keySet());
        words(schema, "/properties/sites/items/properties/site", Places.names());
        ScreeningRules rules = ScreeningRules.load();
        words(
                schema,
                "/properties/clearances/items/properties/rule",
                rules.rules().stream().map(ScreeningRule::id).toList());
        screening((ObjectNode) schema.at("/properties/screening"), rules);
        wells((ObjectNode) schema.at("/properties/wells"), rules.wells());
        return schema;
    }

    /** Every question of the rules is a key with its words; the emergency and urgent ones are required. */
    private static void screening(ObjectNode screening, ScreeningRules rules) {
        screening.put("type", "object").put("additionalProperties", false);
        var required = screening.putArray("required");
        rules.listRequired(Region.LEG).forEach(rule -> required.add(rule.id()));
        var questions = screening.putObject("properties");
        for (ScreeningRule rule : rules.listQuestions(Region.LEG)) {
            questions
                    .putObject(rule.id())
                    .put(
                            "description",
                            "%s: %s".formatted(rule.level().key(), rule.words().askEn()))
                    .put("$ref", "#/$defs/yesNoUnknown");
        }
    }

    private static void wells(ObjectNode block, Wells wells) {
        var items = (ObjectNode) block.at("/properties");
        for (Wells.Item item : wells.items()) {
            items.putObject(item.id()).put("description", item.wordsEn()).put("$ref", "#/$defs/yesNoUnknown");
        }
    }

    private static void words(ObjectNode schema, String pointer, Collection<String> words) {
        var list = ((ObjectNode) schema.at(pointer)).putArray("enum");
        words.forEach(list::add);
    }
}
