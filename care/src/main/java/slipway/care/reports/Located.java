package slipway.care.reports;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/** A value of a YAML file with its place. */
sealed interface Located {
    /** Line and column from 1, for messages. */
    record Place(int line, int column) {
        @Override
        public String toString() {
            return "line %d, column %d".formatted(line, column);
        }
    }

    Place place();

    /** A single value; its text is empty for an explicit null. */
    record Scalar(String text, Place place) implements Located {}

    /** A list. */
    record Items(List<Located> items, Place place) implements Located {
        public Items {
            items = List.copyOf(items);
        }
    }

    /** A mapping, with the places of keys that were given twice. */
    record Mapping(Map<String, Located> values, List<String> duplicates, Place place) implements Located {
        public Mapping {
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
            duplicates = List.copyOf(duplicates);
        }

        Optional<Located> find(String key) {
            return Optional.ofNullable(values.get(key));
        }

        /** The text of a single value; empty if there is none. */
        String text(String key) {
            return find(key)
                    .map(value -> value instanceof Scalar scalar ? scalar.text() : "")
                    .orElse("");
        }
    }

    /** Reads the value that starts at the current token. */
    static Located read(JsonParser parser) {
        Place place = place(parser);
        if (parser.currentToken() == JsonToken.START_OBJECT) {
            return mapping(parser, place);
        }
        if (parser.currentToken() == JsonToken.START_ARRAY) {
            var items = new ArrayList<Located>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(read(parser));
            }
            return new Items(items, place);
        }
        boolean none = parser.currentToken() == JsonToken.VALUE_NULL;
        return new Scalar(none ? "" : parser.getString().strip(), place);
    }

    private static Mapping mapping(JsonParser parser, Place place) {
        var values = new LinkedHashMap<String, Located>();
        var duplicates = new ArrayList<String>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            Place at = place(parser);
            parser.nextToken();
            Located value = read(parser);
            if (values.putIfAbsent(key, value) != null) {
                duplicates.add("%s: %s is given twice".formatted(at, key));
            }
        }
        return new Mapping(values, duplicates, place);
    }

    private static Place place(JsonParser parser) {
        var at = parser.currentTokenLocation();
        return new Place(at.getLineNr(), at.getColumnNr());
    }
}
