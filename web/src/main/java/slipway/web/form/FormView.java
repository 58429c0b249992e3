package slipway.web.form;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slipway.exercises.yaml.Mistake;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A form as it is shown: what the fields hold and what is wrong with them.
 *
 * @param content part of a case, by paths
 * @param mistakes with paths as {@link Mistake#path()} writes them
 */
public record FormView(ObjectNode content, List<Mistake> mistakes) {
    public FormView {
        mistakes = List.copyOf(mistakes);
    }

    /** What a field holds, as text; blank if nothing. */
    public String value(String path) {
        JsonNode found = at(path);
        return found.isValueNode() && !found.isNull() ? found.asString() : "";
    }

    /** Whether a field holds a value, or a list of values holds it. */
    public boolean has(String path, String value) {
        JsonNode found = at(path);
        if (found instanceof ArrayNode list) {
            return list.valueStream().anyMatch(entry -> entry.asString("").equals(value));
        }
        return value(path).equals(value);
    }

    /** Number of entries of a list. */
    public int size(String path) {
        return at(path).isArray() ? at(path).size() : 0;
    }

    /** What is wrong with a field; empty if nothing. */
    public Optional<String> mistake(String path) {
        String all = mistakes.stream()
                .filter(mistake -> mistake.path().equals(path))
                .map(Mistake::message)
                .distinct()
                .collect(Collectors.joining("; "));
        return all.isEmpty() ? Optional.empty() : Optional.of(all);
    }

    private JsonNode at(String path) {
        JsonNode at = content;
        Optional<FieldPath> parsed = FieldPath.parse(path);
        if (parsed.isEmpty()) {
            throw new IllegalArgumentException("not a path of a field: " + path);
        }
        for (FieldPath.Step step : parsed.get().steps()) {
            at = step instanceof FieldPath.Key key ? at.path(key.name()) : at.path(((FieldPath.Entry) step).index());
        }
        return at;
    }
}
