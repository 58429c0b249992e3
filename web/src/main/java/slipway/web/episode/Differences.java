package slipway.web.episode;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.springframework.stereotype.Component;
import slipway.care.record.Records;
import slipway.care.record.access.StaffAccount;
import tools.jackson.databind.JsonNode;

/** Two contents of a section side by side, field by field. */
@Component
public class Differences {
    private final Records records;

    Differences(Records records) {
        this.records = records;
    }

    /** One field that differs. */
    public record Change(String path, String theirs, String yours) {}

    /** One field of a form, to send it again. */
    public record Field(String path, String value) {}

    /** Name of an account. */
    String nameOf(String staffId) {
        return records.staff().find(staffId).map(StaffAccount::displayName).orElse(staffId);
    }

    static List<Change> between(JsonNode theirs, JsonNode yours) {
        Map<String, String> left = flat(theirs);
        Map<String, String> right = flat(yours);
        var paths = new TreeSet<>(left.keySet());
        paths.addAll(right.keySet());
        return paths.stream()
                .map(path -> new Change(path, left.getOrDefault(path, ""), right.getOrDefault(path, "")))
                .filter(change -> !change.theirs().equals(change.yours()))
                .toList();
    }

    /** The fields that a form would send for this content. */
    static List<Field> fields(JsonNode content) {
        var fields = new ArrayList<Field>();
        collect(content, "", fields);
        return fields;
    }

    private static Map<String, String> flat(JsonNode content) {
        var flat = new LinkedHashMap<String, String>();
        fields(content).forEach(field -> flat.merge(field.path(), field.value(), (a, b) -> a + ", " + b));
        return flat;
    }

    private static void collect(JsonNode node, String path, List<Field> fields) {
        if (node.isObject()) {
            node.properties()
                    .forEach(entry -> collect(
                            entry.getValue(), path.isEmpty() ? entry.getKey() : path + "." + entry.getKey(), fields));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                boolean row = node.get(i).isContainer();
                collect(node.get(i), row ? path + "[" + i + "]" : path, fields);
            }
        } else {
            fields.add(new Field(path, node.asString("")));
        }
    }
}
