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

    /** Everything in the document that breaks the schema; empty if nothing does. */
    public List<Mistake> check(YamlDocument document) {
        var mistakes = new ArrayList<Mistake>();
        for (Error error : schema.validate(document.root())) {
            String pointer = pointer(error.getInstanceLocation());
            String property = error.getProperty();
            boolean unknownKey = "additionalProperties".equals(error.getKeyword());
            mistakes.add(document.mistake(
                    unknownKey && property != null ? pointer + "/" + property : pointer, words(error, document)));
        }
        return mistakes;
    }

    private static String pointer(com.networknt.schema.path.NodePath path) {
        var pointer = new StringBuilder();
        for (int i = 0; i < path.getNameCount(); i++) {
            pointer.append('/').append(path.getElement(i));
        }
        return pointer.toString();
    }

    private String words(Error error, YamlDocument document) {
        String property = String.valueOf(error.getProperty());
        return switch (String.valueOf(error.getKeyword())) {
            case "additionalProperties" -> NearestWord.complaint("key", property, knownKeys(error));
            case "required" -> "the key \"%s\" is missing".formatted(property);
            case "enum" -> {
                JsonNode given = document.root().at(pointer(error.getInstanceLocation()));
                JsonNode allowed = error.getSchemaNode();
                yield NearestWord.complaint(
                        "word", given.isString() ? given.stringValue() : given.toString(), texts(allowed));
            }
            default -> error.getMessage().replaceFirst("^[^:]*: ", "");
        };
    }

    /** The keys that the schema knows at the place where it found an unknown one. */
    private List<String> knownKeys(Error error) {
        String atKeyword = pointer(error.getSchemaLocation().getFragment());
        String atObject = atKeyword.substring(0, Math.max(0, atKeyword.lastIndexOf('/')));
        return List.copyOf(
                schema.getSchemaNode().at(atObject).path("properties").propertyNames());
    }

    private static List<String> texts(JsonNode list) {
        var texts = new ArrayList<String>();
        list.forEach(node -> texts.add(node.isString() ? node.stringValue() : node.toString()));
        return texts;
    }
}
