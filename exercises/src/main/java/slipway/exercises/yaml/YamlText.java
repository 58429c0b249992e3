package slipway.exercises.yaml;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes trees as YAML that {@link YamlDocument} reads back to the same tree. Objects are indented; what fits on a line
 * stands on one. Text that could be taken for something else is quoted as in JSON, which is YAML too.
 */
public final class YamlText {
    private static final int WIDTH = 120;
    private static final Pattern PLAIN =
            Pattern.compile("\\p{L}([\\p{L}\\p{M}0-9_ ./()+;-]*[\\p{L}\\p{M}0-9_./()+;-])?");
    private static final Set<String> NO_TEXT = Set.of("true", "false", "null", "nan", "inf");

    /** What YAML takes for a line break or drops, and half of a pair. */
    private static final Pattern UNSAFE = Pattern.compile("[\\x7f-\\x9f\\u2028\\u2029\\ufeff\\ufffe\\uffff]");

    private YamlText() {}

    /** The text of an object, keys in their order. */
    public static String of(JsonNode object) {
        var text = new StringBuilder();
        block(object, "", text);
        return text.toString();
    }

    private static void block(JsonNode object, String indent, StringBuilder text) {
        for (String key : object.propertyNames()) {
            String start = indent + scalar(key) + ":";
            JsonNode value = object.path(key);
            String line = start + " " + flow(value);
            if (line.length() <= WIDTH || value.isEmpty()) {
                text.append(line).append('\n');
                continue;
            }
            text.append(start).append('\n');
            if (value.isObject()) {
                block(value, indent + "  ", text);
            } else {
                list(value, indent + "  ", text);
            }
        }
    }

    private static void list(JsonNode list, String indent, StringBuilder text) {
        for (JsonNode entry : list) {
            String line = indent + "- " + flow(entry);
            if (line.length() <= WIDTH || !entry.isObject() || entry.isEmpty()) {
                text.append(line).append('\n');
            } else {
                var inner = new StringBuilder();
                block(entry, indent + "  ", inner);
                text.append(indent).append("- ").append(inner.substring(indent.length() + 2));
            }
        }
    }

    private static String flow(JsonNode node) {
        if (node.isObject()) {
            return node.propertyNames().stream()
                    .map(key -> scalar(key) + ": " + flow(node.path(key)))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (node.isArray()) {
            return node.valueStream().map(YamlText::flow).collect(Collectors.joining(", ", "[", "]"));
        }
        if (node.isNull()) {
            throw new IllegalArgumentException("null is not written: what is not known is left out");
        }
        return node.isString() ? scalar(node.stringValue()) : node.toString();
    }

    private static String scalar(String text) {
        boolean plain = PLAIN.matcher(text).matches() && !NO_TEXT.contains(text.toLowerCase(Locale.ROOT));
        return plain
                ? text
                : UNSAFE.matcher(JsonMapper.shared().writeValueAsString(text))
                        .replaceAll(found ->
                                "\\\\u%04x".formatted((int) found.group().charAt(0)));
    }
}
