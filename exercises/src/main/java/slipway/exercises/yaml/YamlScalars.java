package slipway.exercises.yaml;

import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.resolver.ScalarResolver;
import org.snakeyaml.engine.v2.schema.JsonSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** What a plain YAML word means: YAML 1.2's JSON schema, in which yes and no stay words. */
final class YamlScalars {
    private static final ScalarResolver RESOLVER = new JsonSchema().getScalarResolver();
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private YamlScalars() {}

    static JsonNode node(ScalarEvent event) {
        String text = event.getValue();
        if (!event.isPlain()) {
            return JSON.stringNode(text);
        }
        Tag tag = RESOLVER.resolve(text, true);
        if (tag.equals(Tag.NULL)) {
            return JSON.nullNode();
        }
        if (tag.equals(Tag.BOOL)) {
            return JSON.booleanNode(text.equals("true"));
        }
        return tag.equals(Tag.INT) || tag.equals(Tag.FLOAT) ? number(text) : JSON.stringNode(text);
    }

    /** Beyond this nobody writes a number by hand, and the schema library does not take it for a whole one. */
    private static final double LARGEST = 1e15;

    /** A number; infinities, NaN and what is beyond {@link #LARGEST} stay text, which the schema refuses for a number. */
    private static JsonNode number(String text) {
        try {
            double value = Double.parseDouble(text);
            if (!(Math.abs(value) < LARGEST)) {
                return JSON.stringNode(text);
            }
            return value == Math.rint(value) ? JSON.numberNode((long) value) : JSON.numberNode(value);
        } catch (NumberFormatException e) {
            return JSON.stringNode(text);
        }
    }
}
