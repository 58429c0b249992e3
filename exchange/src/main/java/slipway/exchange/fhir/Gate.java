package slipway.exchange.fhir;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;

/**
 * Looks at a text as a stream before anything is built from it: size, depth, lengths, counts, names given twice. Needs
 * memory for the text and a few names only.
 */
final class Gate {
    /** Largest text. */
    static final int MAX_BYTES = 8_000_000;

    static final int MAX_DEPTH = 30;
    static final int MAX_TOKENS = 1_000_000;
    static final int MAX_ENTRIES = 20_000;
    /** Written out, such a number would fill the memory. */
    private static final Pattern HUGE = Pattern.compile("[eE][+-]?[0-9]{4}");

    private static final int MAX_STRING = 6_000_000;
    private static final int MAX_NAME = 100;
    private static final int MAX_NUMBER = 40;
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MAX_DEPTH)
                    .maxStringLength(MAX_STRING)
                    .maxNameLength(MAX_NAME)
                    .maxNumberLength(MAX_NUMBER)
                    .maxTokenCount(MAX_TOKENS)
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private Gate() {}

    /**
     * Lets a text pass that may be read on.
     *
     * @throws RefusedException with the reason otherwise
     */
    static void check(byte[] text) {
        if (text.length == 0) {
            throw new RefusedException("the file is empty");
        }
        if (text.length > MAX_BYTES) {
            throw new RefusedException("a bundle must have at most %d bytes, had %d".formatted(MAX_BYTES, text.length));
        }
        int first = firstLetter(text);
        if (first == '<') {
            throw new RefusedException("XML is not read; send the bundle as JSON");
        }
        if (first != '{') {
            throw new RefusedException("a bundle must be a JSON object");
        }
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            walk(parser);
        } catch (JacksonException e) {
            var place = e.getLocation();
            throw new RefusedException("the bundle is no JSON that is read here (line %d, column %d): %s"
                    .formatted(
                            place == null ? 0 : place.getLineNr(), place == null ? 0 : place.getColumnNr(), kind(e)));
        }
    }

    private static int firstLetter(byte[] text) {
        for (byte each : text) {
            if (!Character.isWhitespace(each)) {
                return each;
            }
        }
        return ' ';
    }

    /** Its own message may repeat what stood in the file. */
    private static String kind(JacksonException e) {
        String message = String.valueOf(e.getOriginalMessage());
        if (message.contains("Duplicate")) {
            return "a name is given twice in one object";
        }
        if (message.contains("exceeds the maximum")) {
            return "it is nested deeper, longer or larger than at most allowed";
        }
        return "it breaks off or holds what JSON does not allow";
    }

    /** The parser behind this gate takes it that no name is empty. */
    private static String name(JsonParser parser) {
        String name = parser.currentName();
        if (name.isEmpty()) {
            throw new RefusedException("a name in the bundle is empty (line %d)"
                    .formatted(parser.currentTokenLocation().getLineNr()));
        }
        return name;
    }

    private static void walk(JsonParser parser) {
        Set<String> addresses = new HashSet<>();
        int depth = 0;
        int entries = 0;
        String name = "";
        boolean bundle = false;
        JsonToken token = parser.nextToken();
        while (token != null) {
            if (token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY) {
                depth++;
                entries += depth == 3 && token == JsonToken.START_OBJECT ? 1 : 0;
            } else if (token == JsonToken.END_OBJECT || token == JsonToken.END_ARRAY) {
                depth--;
                if (depth == 0 && parser.nextToken() != null) {
                    throw new RefusedException("something follows the bundle");
                }
            } else if (token == JsonToken.PROPERTY_NAME) {
                name = name(parser);
            } else if (depth == 1 && name.equals("resourceType")) {
                bundle = parser.getString().equals("Bundle");
            } else if (depth == 3 && name.equals("fullUrl") && !addresses.add(parser.getString())) {
                throw new RefusedException("two entries have the same fullUrl");
            }
            if (token == JsonToken.VALUE_NUMBER_FLOAT
                    && HUGE.matcher(parser.getString()).find()) {
                throw new RefusedException("a number has an exponent beyond what is believed");
            }
            if (entries > MAX_ENTRIES) {
                throw new RefusedException("a bundle must have at most %d entries".formatted(MAX_ENTRIES));
            }
            token = parser.nextToken();
        }
        if (!bundle) {
            throw new RefusedException("the file must be a FHIR resource of type Bundle");
        }
    }
}
