package slipway.care.record.content;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slipway.care.CareData;
import slipway.care.casefile.PartCheck;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.YamlDocument;
import slipway.exercises.yaml.YamlSchema;
import slipway.reasoning.deadlines.PaperRule;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * What the section {@link Section#PAPERWORK} may hold: under the key {@code paperwork} the words of an episode file that
 * the record keeps nowhere else, and the words of each visit by its number.
 */
public final class Paperwork {
    /** The key that everything stands under. */
    public static final String KEY = "paperwork";

    private static final List<String> KEYS =
            List.of("payer", "referrer", "orderedOn", "plan", "diagnoses", "sent", "alone", "relapse");
    private static final List<String> OF_A_VISIT =
            List.of("told", "done", "response", "next", "services", "untimedMinutes");
    private static final Set<String> DAYS = Set.of("orderedOn", "ends", "day");
    private static final int MOST_VISITS = 300;

    private static final ObjectNode SCHEMA = made();
    private static final YamlSchema CHECK = YamlSchema.of(SCHEMA);

    private Paperwork() {}

    /** The schema; a copy. */
    public static ObjectNode schema() {
        return SCHEMA.deepCopy();
    }

    /** What is wrong with the content of the section. Nothing of it must be there. */
    static PartCheck check(ObjectNode content) {
        YamlDocument document =
                YamlDocument.readAsFarAsPossible(KEY, content.toString().getBytes(StandardCharsets.UTF_8));
        var mistakes = new ArrayList<Mistake>();
        CHECK.check(document).forEach(each -> mistakes.add(new Mistake(0, 0, each.path(), each.message())));
        days(content, "", mistakes);
        numbers(content.path(KEY).path("visits"), mistakes);
        return new PartCheck(mistakes, List.of());
    }

    /** The pattern of a day also takes 31 February. */
    private static void days(JsonNode node, String path, List<Mistake> mistakes) {
        node.propertyStream().forEach(entry -> {
            String at = path.isEmpty() ? entry.getKey() : path + "." + entry.getKey();
            String text = entry.getValue().asString("");
            if (DAYS.contains(entry.getKey()) && text.matches("\\d{4}-\\d{2}-\\d{2}") && !isDay(text)) {
                mistakes.add(new Mistake(0, 0, at, "must be a day of the calendar, was " + text));
            }
            days(entry.getValue(), at, mistakes);
        });
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                days(node.get(i), "%s[%d]".formatted(path, i), mistakes);
            }
        }
    }

    private static boolean isDay(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    private static void numbers(JsonNode visits, List<Mistake> mistakes) {
        var seen = new HashSet<Integer>();
        for (int i = 0; i < visits.size(); i++) {
            int number = visits.get(i).path("number").asInt(0);
            if (!seen.add(number)) {
                mistakes.add(new Mistake(
                        0, 0, "paperwork.visits[%d].number".formatted(i), "must be there once only, was " + number));
            }
        }
    }

    private static ObjectNode made() {
        ObjectNode episode = (ObjectNode) JsonMapper.shared().readTree(CareData.text("schema/episode.schema.json"));
        ObjectNode schema = JsonMapper.shared().createObjectNode().put("type", "object");
        ObjectNode own = schema.putObject("properties").putObject(KEY).put("type", "object");
        own.put("additionalProperties", false);
        ObjectNode properties = own.putObject("properties");
        KEYS.forEach(
                key -> properties.set(key, episode.path("properties").path(key).deepCopy()));
        var payers = ((ObjectNode) properties.path("payer")).putArray("enum");
        PaperRule.bundled().stream().map(PaperRule::payer).distinct().forEach(payers::add);
        visits(properties, episode.at("/properties/visits/items/properties"));
        schema.set("$defs", episode.path("$defs"));
        return schema;
    }

    private static void visits(ObjectNode properties, JsonNode of) {
        ObjectNode visits = properties.putObject("visits").put("type", "array").put("maxItems", MOST_VISITS);
        ObjectNode item = visits.putObject("items").put("type", "object").put("additionalProperties", false);
        item.putArray("required").add("number");
        ObjectNode inside = item.putObject("properties");
        inside.putObject("number").put("type", "integer").put("minimum", 1).put("maximum", MOST_VISITS);
        OF_A_VISIT.forEach(key -> inside.set(key, of.path(key).deepCopy()));
    }
}
