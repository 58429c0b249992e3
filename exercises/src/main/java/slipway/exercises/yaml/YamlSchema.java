package slipway.exercises.yaml;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** A JSON schema (draft 2020-12) that ships with the program, and its findings in words. */
public final class YamlSchema {
    private final Schema schema;

    private YamlSchema(Schema schema) {
        this.schema = schema;
    }

    /**
     * The schema in a class path resource.
     *
     * @param resource absolute name, for example {@code /slipway/exercises/exercise.schema.json}
     */
    public static YamlSchema load(String resource) {
        try (var stream = YamlSchema.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without its schema " + resource);
            }
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            return new YamlSchema(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text, InputFormat.JSON));
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled schema " + resource + " cannot be read", e);
        }
    }

    /** A schema put together by the program. */
    public static YamlSchema of(JsonNode schema) {
        return new YamlSchema(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema));
    }

    /** The schema as JSON text. */
    public String text() {
        return schema.getSchemaNode().toPrettyString() + "\n";
    }

    /** Everything in the document that breaks the rules of reading or the schema; empty if nothing does. */
    public List<Mistake> check(YamlDocument document) {
        var mistakes = new ArrayList<Mistake>(document.readingMistakes());
        for (Error error : schema.validate(document.root())) {
            String pointer = Pointers.of(error.getInstanceLocation());
            String property = error.getProperty();
            boolean unknownKey = "additionalProperties".equals(error.getKeyword());
            mistakes.add(document.mistake(
                    unknownKey && property != null ? Pointers.child(pointer, property) : pointer,
                    words(error, document.root().at(pointer))));
        }
        return mistakes;
    }

    private String words(Error error, JsonNode given) {
        String keyword = String.valueOf(error.getKeyword());
        return switch (keyword) {
            case "additionalProperties" ->
                NearestWord.complaint("key", String.valueOf(error.getProperty()), keys(error));
            case "required" -> "the key \"%s\" is missing".formatted(error.getProperty());
            case "enum" -> NearestWord.complaint("word", bare(given), texts(error.getSchemaNode()));
            default -> rule(keyword, error) + ", was " + shown(given);
        };
    }

    private String rule(String keyword, Error error) {
        String limit = bare(error.getSchemaNode());
        return switch (keyword) {
            case "type" -> "must be of type " + limit;
            case "const" -> "must be " + limit;
            case "minimum" -> "must be at least " + limit;
            case "maximum" -> "must be at most " + limit;
            case "exclusiveMinimum" -> "must be more than " + limit;
            case "exclusiveMaximum" -> "must be less than " + limit;
            case "minLength" -> "must have at least %s characters".formatted(limit);
            case "maxLength" -> "must have at most %s characters".formatted(limit);
            case "minItems" -> "must have at least %s entries".formatted(limit);
            case "maxItems" -> "must have at most %s entries".formatted(limit);
            case "uniqueItems" -> "must not hold the same entry twice";
            case "pattern" ->
                owner(error).has("description")
                        ? "must be: " + bare(owner(error).path("description"))
                        : "must match " + limit;
            default -> error.getMessage().replaceFirst("^[^:]*: ", "");
        };
    }

    /** The schema object that holds the keyword. */
    private JsonNode owner(Error error) {
        return schema.getSchemaNode()
                .at(Pointers.parent(Pointers.of(error.getSchemaLocation().getFragment())));
    }

    /** The keys that the schema knows at the place where it found an unknown one. */
    private List<String> keys(Error error) {
        return List.copyOf(owner(error).path("properties").propertyNames());
    }

    /** A value as it may be quoted in a message. */
    private static String shown(JsonNode given) {
        return given.isMissingNode() ? "nothing" : NearestWord.shortened(given.toString());
    }

    private static String bare(JsonNode node) {
        return node.isString() ? node.stringValue() : node.toString();
    }

    private static List<String> texts(JsonNode list) {
        var texts = new ArrayList<String>();
        list.forEach(node -> texts.add(bare(node)));
        return texts;
    }
}
