package slipway.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.Test;
import slipway.web.WebOptions;
import tools.jackson.databind.JsonNode;

/** The description says what there is, and nothing else. */
class DescriptionTest {
    private static final Description DESCRIPTION = Description.bundled();

    @Test
    void describesEveryRouteOfTheTableAndNoOther() throws IOException {
        assertThat(DESCRIPTION.operations()).isEqualTo(new TreeSet<>(scopes().keySet()));
    }

    @Test
    void namesTheScopeOfEveryOperation() throws IOException {
        scopes().forEach((route, scope) -> {
            String[] parts = route.split(" ", 2);
            JsonNode operation =
                    DESCRIPTION.root().path("paths").path(parts[1]).path(parts[0].toLowerCase(Locale.ROOT));
            assertThat(operation.path("summary").asString("")).as(route).isNotBlank();
            if (scope.isEmpty()) {
                assertThat(operation.path("security").isArray()).as(route).isTrue();
            } else {
                assertThat(operation.path("description").asString("")).as(route).startsWith("Scope " + scope);
            }
        });
    }

    @Test
    void everyReferenceLeadsSomewhereAndEveryOperationHasItsOwnName() {
        assertThat(DESCRIPTION.references())
                .isNotEmpty()
                .allMatch(ref -> ref.startsWith("#/")
                        && !DESCRIPTION.root().at(ref.substring(1)).isMissingNode());
        var names = new ArrayList<String>();
        DESCRIPTION
                .operations()
                .forEach(route -> names.add(operation(route).path("operationId").asString()));
        assertThat(new HashSet<>(names)).hasSameSizeAs(names);
    }

    @Test
    void examplesHaveTheFormThatTheyAreExamplesOf() {
        var tried = new ArrayList<String>();
        tryAll(DESCRIPTION.root(), tried);
        assertThat(tried).hasSizeGreaterThan(5);
    }

    private static void tryAll(JsonNode node, java.util.List<String> tried) {
        if (node.isObject() && node.has("example") && node.has("schema")) {
            assertThat(DESCRIPTION.mistakes(node.path("schema"), node.path("example")))
                    .as(node.path("example").toString())
                    .isEmpty();
            tried.add(node.path("example").toString());
        }
        if (node.isObject() || node.isArray()) {
            node.forEach(each -> tryAll(each, tried));
        }
    }

    @Test
    void everyPathNamesItsParameters() {
        DESCRIPTION.root().path("paths").properties().forEach(path -> {
            var named = new HashSet<String>();
            path.getValue()
                    .path("parameters")
                    .forEach(each ->
                            named.add(DESCRIPTION.resolved(each).path("name").asString()));
            var meant = new HashSet<String>();
            java.util.regex.Pattern.compile("\\{(\\w+)}")
                    .matcher(path.getKey())
                    .results()
                    .forEach(found -> meant.add(found.group(1)));
            assertThat(named).as(path.getKey()).isEqualTo(meant);
        });
    }

    private static JsonNode operation(String route) {
        String[] parts = route.split(" ", 2);
        return DESCRIPTION.root().path("paths").path(parts[1]).path(parts[0].toLowerCase(Locale.ROOT));
    }

    /** The scope of each route for programs; empty if it needs none. */
    private static Map<String, String> scopes() throws IOException {
        var scopes = new TreeMap<String, String>();
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var reader = new InputStreamReader(
                        Objects.requireNonNull(
                                WebOptions.class.getResourceAsStream("/slipway/web/security/routes.csv")),
                        StandardCharsets.UTF_8);
                var lines = format.parse(reader)) {
            lines.forEach(line -> {
                if (line.get("pattern").startsWith("/api/")) {
                    String who = line.get("who");
                    scopes.put(
                            line.get("method") + " " + line.get("pattern"),
                            who.startsWith("scope:") ? who.substring(6).split(" ", 2)[0] : "");
                }
            });
        }
        return scopes;
    }
}
