package slipway.exercises.yaml;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectReader;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * A YAML file as a tree that still knows the line and column of each value. Only what a person writes by hand is taken:
 * UTF-8, one document, a mapping at the top, at most {@value #MAX_BYTES} bytes and {@value #MAX_DEPTH} levels, no
 * anchors or aliases, no key twice.
 */
public final class YamlDocument {
    /** Largest file that is read. */
    public static final int MAX_BYTES = 200_000;

    private static final int MAX_DEPTH = 20;
    private static final ObjectReader READER = YAMLMapper.builder(YAMLFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(MAX_DEPTH)
                            .maxStringLength(MAX_BYTES)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .build()
            .reader();

    private final String source;
    private final JsonNode root;
    private final Map<String, Place> places;

    private YamlDocument(String source, JsonNode root, Map<String, Place> places) {
        this.source = source;
        this.root = root;
        this.places = places;
    }

    private record Place(int line, int column) {}

    /**
     * Reads a file.
     *
     * @param source its name for messages
     * @throws MistakesException if it is not such a file; nothing else is thrown
     */
    public static YamlDocument read(String source, byte[] bytes) {
        if (bytes.length > MAX_BYTES) {
            throw refused(source, "the file must have at most %d bytes, had %d".formatted(MAX_BYTES, bytes.length));
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return readText(source, text);
        } catch (CharacterCodingException e) {
            throw refused(source, "the file must be UTF-8 text");
        }
    }

    private static YamlDocument readText(String source, String text) {
        try {
            Map<String, Place> places = placesIn(source, text);
            JsonNode root = READER.readTree(text);
            if (!root.isObject()) {
                throw refused(source, "the file must hold keys and values");
            }
            return new YamlDocument(source, root, places);
        } catch (JacksonException e) {
            throw new MistakesException(source, List.of(asMistake(e)));
        } catch (MistakesException e) {
            throw e;
        } catch (RuntimeException e) {
            // The YAML library lets some of its own unchecked exceptions through on broken input.
            throw refused(source, "the file is not YAML: " + firstLine(e.getMessage()));
        }
    }

    /** The first pass: where each value stands; the tree itself forgets it. */
    private static Map<String, Place> placesIn(String source, String text) {
        var places = new HashMap<String, Place>();
        try (var parser = (YAMLParser) READER.createParser(text)) {
            int depth = 0;
            while (parser.nextToken() != null) {
                if (depth == 0 && !places.isEmpty()) {
                    throw refused(source, "the file must hold one document, had several");
                }
                refuseAlias(source, parser);
                TokenStreamLocation at = parser.currentTokenLocation();
                String pointer = parser.streamReadContext().pathAsPointer().toString();
                // The first token seen for a path is its key, or the value itself in a list.
                places.putIfAbsent(pointer, new Place(at.getLineNr(), at.getColumnNr()));
                depth += parser.currentToken().isStructStart()
                        ? 1
                        : parser.currentToken().isStructEnd() ? -1 : 0;
            }
        }
        return places;
    }

    private static void refuseAlias(String source, YAMLParser parser) {
        if (parser.isCurrentAlias() || parser.getObjectId() != null) {
            TokenStreamLocation at = parser.currentTokenLocation();
            throw new MistakesException(
                    source,
                    List.of(new Mistake(
                            at.getLineNr(), at.getColumnNr(), "", "anchors (&) and aliases (*) are not taken")));
        }
    }

    private static Mistake asMistake(JacksonException e) {
        TokenStreamLocation at = e.getLocation();
        String message = firstLine(e.getOriginalMessage());
        return at == null || at.getLineNr() < 1
                ? Mistake.ofFile(message)
                : new Mistake(at.getLineNr(), Math.max(1, at.getColumnNr()), "", message);
    }

    private static String firstLine(@org.jspecify.annotations.Nullable String message) {
        if (message == null || message.isBlank()) {
            return "unreadable";
        }
        String line = message.strip().lines().findFirst().orElse("unreadable");
        return line.length() > 300 ? line.substring(0, 300) + "…" : line;
    }

    private static MistakesException refused(String source, String message) {
        return new MistakesException(source, List.of(Mistake.ofFile(message)));
    }

    /** Name of the file for messages. */
    public String source() {
        return source;
    }

    /** What the file says: an object. */
    public JsonNode root() {
        return root;
    }

    /**
     * A mistake at a value.
     *
     * @param pointer JSON pointer of the value, for example {@code /poses/1/angles}; if the file has no such value, the
     *     place of the nearest one around it is named
     */
    public Mistake mistake(String pointer, String message) {
        String known = pointer;
        while (!known.isEmpty() && !places.containsKey(known)) {
            known = known.substring(0, known.lastIndexOf('/'));
        }
        Place place = places.getOrDefault(known, new Place(1, 1));
        return new Mistake(place.line, place.column, pathOf(pointer), message);
    }

    /** {@code /poses/1/angles} in the way people write it: {@code poses[1].angles}. */
    private static String pathOf(String pointer) {
        return pointer.replaceAll("/(\\d+)(?=/|$)", "[$1]")
                .replace("/", ".")
                .replaceFirst("^\\.", "")
                .replace("~1", "/")
                .replace("~0", "~");
    }
}
