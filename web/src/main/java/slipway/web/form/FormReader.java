package slipway.web.form;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Turns what a form sent into a part of a case. Blank fields count as not given; a number that is none stays text, so
 * that the rules of case files say what is wrong with it and the field shows it again.
 */
public final class FormReader {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    /** Nobody writes a number beyond this by hand. */
    private static final int LONGEST_NUMBER = 12;

    private FormReader() {}

    /** What a field holds; blank if the form did not send it. */
    public static String text(@Nullable String sent) {
        return sent == null ? "" : sent;
    }

    /** The content of the fields below the given top keys; other fields are left alone. */
    public static ObjectNode read(Map<String, String[]> fields, List<String> topKeys) {
        ObjectNode root = JSON.objectNode();
        // Sorted, so that entries of a list come in their order.
        for (Map.Entry<String, String[]> field : new TreeMap<>(fields).entrySet()) {
            Optional<FieldPath> path = FieldPath.parse(field.getKey()).filter(found -> belongs(found, topKeys));
            path.ifPresent(found -> put(root, found, field.getValue()));
        }
        return (ObjectNode) withoutGaps(root);
    }

    private static boolean belongs(FieldPath path, List<String> topKeys) {
        return path.steps().get(0) instanceof FieldPath.Key key && topKeys.contains(key.name());
    }

    private static void put(ObjectNode root, FieldPath path, String[] values) {
        List<String> given = Arrays.stream(values)
                .map(String::strip)
                .filter(value -> !value.isEmpty())
                .toList();
        if (given.isEmpty()) {
            return;
        }
        FieldTypes.Type type = FieldTypes.of(path);
        JsonNode value = type == FieldTypes.Type.LIST ? list(given) : scalar(given.get(0), type);
        JsonNode at = root;
        List<FieldPath.Step> steps = path.steps();
        for (int i = 0; i < steps.size() - 1; i++) {
            at = down(at, steps.get(i), steps.get(i + 1) instanceof FieldPath.Entry);
        }
        set(at, steps.get(steps.size() - 1), value);
    }

    private static JsonNode list(List<String> values) {
        ArrayNode list = JSON.arrayNode();
        values.forEach(list::add);
        return list;
    }

    private static JsonNode scalar(String text, FieldTypes.Type type) {
        if (type != FieldTypes.Type.NUMBER || text.length() > LONGEST_NUMBER) {
            return JSON.stringNode(text);
        }
        try {
            // A comma is how most of the world writes the decimal point.
            double value = new BigDecimal(text.replace(',', '.').replace('\u2212', '-')).doubleValue();
            return value == Math.rint(value) ? JSON.numberNode((long) value) : JSON.numberNode(value);
        } catch (NumberFormatException e) {
            return JSON.stringNode(text);
        }
    }

    /** The object or list one step down, made if it is not there. */
    private static JsonNode down(JsonNode at, FieldPath.Step step, boolean toList) {
        JsonNode there =
                step instanceof FieldPath.Key key ? at.path(key.name()) : at.path(((FieldPath.Entry) step).index());
        if (there.isContainer()) {
            return there;
        }
        JsonNode made = toList ? JSON.arrayNode() : JSON.objectNode();
        set(at, step, made);
        return made;
    }

    private static void set(JsonNode at, FieldPath.Step step, JsonNode value) {
        if (step instanceof FieldPath.Key key && at instanceof ObjectNode object) {
            object.set(key.name(), value);
        } else if (step instanceof FieldPath.Entry entry && at instanceof ArrayNode list) {
            while (list.size() <= entry.index()) {
                list.addNull();
            }
            list.set(entry.index(), value);
        }
    }

    /** Lists close up where a row was removed or left blank. */
    private static JsonNode withoutGaps(JsonNode node) {
        if (node instanceof ArrayNode list) {
            ArrayNode closed = JSON.arrayNode();
            list.forEach(entry -> {
                if (!entry.isNull()) {
                    closed.add(withoutGaps(entry));
                }
            });
            return closed;
        }
        if (node instanceof ObjectNode object) {
            ObjectNode closed = JSON.objectNode();
            object.properties().forEach(entry -> closed.set(entry.getKey(), withoutGaps(entry.getValue())));
            return closed;
        }
        return node;
    }
}
