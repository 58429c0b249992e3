package slipway.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.http.server.PathContainer;
import org.springframework.web.util.pattern.PathPatternParser;
import slipway.exercises.yaml.YamlDocument;
import slipway.web.shell.Problem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The description of the interface, as the tests read it. */
final class Description {
    private static final Set<String> METHODS = Set.of("get", "post", "put", "delete", "patch");
    private static final Description BUNDLED = new Description();

    private final ObjectNode root;

    private Description() {
        try (var in = Objects.requireNonNull(DescriptionApi.class.getResourceAsStream("openapi.yaml"))) {
            root = (ObjectNode)
                    YamlDocument.read("openapi.yaml", in.readAllBytes()).root();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Description bundled() {
        return BUNDLED;
    }

    JsonNode root() {
        return root;
    }

    /** Every operation as method and path. */
    Set<String> operations() {
        var all = new TreeSet<String>();
        root.path("paths")
                .properties()
                .forEach(path -> path.getValue().propertyNames().stream()
                        .filter(METHODS::contains)
                        .forEach(method -> all.add(method.toUpperCase(java.util.Locale.ROOT) + " " + path.getKey())));
        return all;
    }

    /** Holds an answer against the description: the status must be listed, and the body must have its form. */
    void check(String method, String address, HttpResponse<byte[]> answer) {
        String path = address.split("\\?", 2)[0];
        JsonNode operation = root.path("paths").properties().stream()
                .filter(each ->
                        PathPatternParser.defaultInstance.parse(each.getKey()).matches(PathContainer.parsePath(path)))
                .map(each -> each.getValue().path(method.toLowerCase(java.util.Locale.ROOT)))
                .findFirst()
                .orElse(root.objectNode());
        String type = answer.headers().firstValue("Content-Type").orElse("").split(";", 2)[0];
        if (operation.isEmpty()) {
            // Not an address of the description: still a problem that programs can read.
            assertThat(type).isEqualTo(Problem.MEDIA_TYPE);
            return;
        }
        JsonNode response = resolved(operation.path("responses").path(String.valueOf(answer.statusCode())));
        assertThat(response.isMissingNode())
                .as("%s %s gave %d, which is not described", method, path, answer.statusCode())
                .isFalse();
        if (answer.body().length == 0) {
            return;
        }
        JsonNode content = response.path("content").path(type);
        assertThat(content.isMissingNode())
                .as("%s %s gave %s, which is not described", method, path, type)
                .isFalse();
        if (type.endsWith("json")) {
            assertThat(mistakes(content.path("schema"), JsonMapper.shared().readTree(answer.body())))
                    .isEmpty();
        }
    }

    /** What of a value breaks a schema of the description. */
    List<String> mistakes(JsonNode schema, JsonNode value) {
        ObjectNode whole = root.objectNode();
        whole.set("components", root.path("components"));
        whole.putArray("allOf").add(schema);
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(whole)
                .validate(value)
                .stream()
                .map(Error::toString)
                .toList();
    }

    JsonNode resolved(JsonNode node) {
        String ref = node.path("$ref").asString("");
        return ref.isEmpty() ? node : root.at(ref.substring(1));
    }

    /** Every reference, wherever it stands. */
    List<String> references() {
        var all = new ArrayList<String>();
        collect(root, all);
        return all;
    }

    private static void collect(JsonNode node, List<String> all) {
        if (node.isObject()) {
            node.properties().forEach(each -> {
                if (each.getKey().equals("$ref")) {
                    all.add(each.getValue().asString());
                }
                collect(each.getValue(), all);
            });
        }
        if (node.isArray()) {
            node.forEach(each -> collect(each, all));
        }
    }
}
