package slipway.web.form;

import java.util.List;
import java.util.Map;
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
 * @param told what the person told about a field before the visit, by path
 */
public record FormView(ObjectNode content, List<Mistake> mistakes, Map<String, Told> told) {
    public FormView {
        mistakes = List.copyOf(mistakes);
        told = Map.copyOf(told);
    }

    /** A form about which nothing was told. */
    public FormView(ObjectNode content, List<Mistake> mistakes) {
        this(content, mistakes, Map.of());
    }

    /** The same with what was told. */
    public FormView with(Map<String, Told> words) {
        return new FormView(content, mistakes, words);
    }

    /** What was told about a field; empty if nothing. */
    public Optional<Told> told(String path) {
        return Optional.ofNullable(told.get(path));
    }

    /** Whether a field holds what was told. */
    public boolean holdsTold(String path) {
        return told(path)
                .filter(each -> each.value().toString().equals(at(path).toString()))
                .isPresent();
    }

    /** Whether to ask why a field says other than what was told: it does, and no reason is on record. */
    public boolean asksWhy(String path) {
        boolean begun = mistake(path).isPresent() || !value("why." + path).isEmpty();
        return told(path)
                .filter(each -> !holdsTold(path))
                .filter(each -> begun || (isFilled(path) && each.why().isEmpty()))
                .isPresent();
    }

    /** Whether a field holds anything. */
    public boolean isFilled(String path) {
        JsonNode found = at(path);
        return !found.isMissingNode() && !found.isNull();
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
