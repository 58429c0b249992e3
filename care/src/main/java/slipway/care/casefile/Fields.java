package slipway.care.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.exercises.yaml.Pointers;
import slipway.mechanics.body.Side;
import tools.jackson.databind.JsonNode;

/**
 * One object of the file with its place. Values of the wrong type look absent, so that the rules can run over a file
 * that has mistakes; reading a required value presumes that the schema was kept.
 */
record Fields(JsonNode node, String pointer) {
    Fields child(String key) {
        return new Fields(node.path(key), Pointers.child(pointer, key));
    }

    /** The entries of a list; empty if there is none. */
    List<Fields> list(String key) {
        var entries = new ArrayList<Fields>();
        JsonNode list = node.path(key);
        for (int i = 0; list.isArray() && i < list.size(); i++) {
            entries.add(new Fields(list.get(i), Pointers.child(Pointers.child(pointer, key), i)));
        }
        return entries;
    }

    List<String> keys() {
        return node.isObject() ? List.copyOf(node.propertyNames()) : List.of();
    }

    boolean has(String key) {
        return node.has(key);
    }

    Optional<String> asText() {
        return node.isString() ? Optional.of(node.stringValue()) : Optional.empty();
    }

    OptionalDouble asNumber() {
        return node.isNumber() ? OptionalDouble.of(node.doubleValue()) : OptionalDouble.empty();
    }

    /** The value as it was written, whatever its type. */
    String written() {
        return asText().orElseGet(node::toString);
    }

    Optional<String> findText(String key) {
        return child(key).asText();
    }

    String text(String key) {
        return findText(key).orElseThrow(() -> missing(key));
    }

    OptionalDouble findNumber(String key) {
        return child(key).asNumber();
    }

    double number(String key) {
        return findNumber(key).orElseThrow(() -> missing(key));
    }

    /** A yes or no; both the words and true and false are taken. */
    Optional<Boolean> findYesNo(String key) {
        return switch (child(key).written()) {
            case "yes", "true" -> Optional.of(true);
            case "no", "false" -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    boolean yesNo(String key) {
        return findYesNo(key).orElseThrow(() -> missing(key));
    }

    Optional<Side> findSide(String key) {
        return findText(key)
                .filter(text -> text.equals("left") || text.equals("right"))
                .map(text -> Side.valueOf(text.toUpperCase(Locale.ROOT)));
    }

    Side side(String key) {
        return findSide(key).orElseThrow(() -> missing(key));
    }

    /** The texts of a list. */
    List<String> texts(String key) {
        return list(key).stream().flatMap(entry -> entry.asText().stream()).toList();
    }

    private IllegalStateException missing(String key) {
        return new IllegalStateException("the schema of case files lets %s through without a usable value"
                .formatted(Pointers.shown(Pointers.child(pointer, key))));
    }
}
