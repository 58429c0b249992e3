package slipway.exercises.yaml;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * A YAML file as a tree that still knows the line and column of each value. Only what a person writes by hand is taken:
 * UTF-8, one document, a mapping at the top, at most {@value #MAX_BYTES} bytes and 20 levels, no
 * anchors or aliases, no key twice.
 */
public final class YamlDocument {
    /** Largest file that is read. */
    public static final int MAX_BYTES = 200_000;

    private final String source;
    private final JsonNode root;
    private final Map<String, Place> places;
    private final List<Mistake> readingMistakes;

    private YamlDocument(String source, JsonNode root, YamlTree tree) {
        this.source = source;
        this.root = root;
        this.places = Map.copyOf(tree.places());
        this.readingMistakes = List.copyOf(tree.mistakes());
    }

    /**
     * Reads a file.
     *
     * @param source its name for messages
     * @throws MistakesException if it is not such a file; nothing else is thrown
     */
    public static YamlDocument read(String source, byte[] bytes) {
        YamlDocument document = readAsFarAsPossible(source, bytes);
        if (!document.readingMistakes.isEmpty()) {
            throw new MistakesException(source, document.readingMistakes);
        }
        return document;
    }

    /**
     * Reads a file that may have a key twice and the like, so that what is wrong further on can be told at the same time;
     * see {@link #readingMistakes()}.
     *
     * @param source its name for messages
     * @throws MistakesException if there is no data to go on with
     */
    public static YamlDocument readAsFarAsPossible(String source, byte[] bytes) {
        if (bytes.length == 0) {
            throw refused(source, "the file is empty; it must hold keys and values");
        }
        if (bytes.length > MAX_BYTES) {
            throw refused(source, "the file must have at most %d bytes, had %d".formatted(MAX_BYTES, bytes.length));
        }
        YamlTree tree = YamlTree.read(decoded(source, bytes));
        JsonNode root = tree.root().orElse(null);
        if (root != null && root.isObject()) {
            return new YamlDocument(source, root, tree);
        }
        throw tree.mistakes().isEmpty()
                ? refused(source, "the file must hold keys and values")
                : new MistakesException(source, tree.mistakes());
    }

    private static String decoded(String source, byte[] bytes) {
        CharBuffer text = CharBuffer.allocate(bytes.length);
        ByteBuffer input = ByteBuffer.wrap(bytes);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(input, text, true);
        text.flip();
        if (result.isError()) {
            Place place = Place.behind(text);
            String message = "the file must be UTF-8 text, had byte 0x%02x".formatted(bytes[input.position()]);
            throw new MistakesException(source, List.of(new Mistake(place.line(), place.column(), "", message)));
        }
        return text.toString().replaceFirst("^\uFEFF", "");
    }

    private static MistakesException refused(String source, String message) {
        return new MistakesException(source, List.of(Mistake.ofFile(message)));
    }

    /** What was wrong in reading but did not stop it: keys given twice, anchors, tags. */
    public List<Mistake> readingMistakes() {
        return readingMistakes;
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
            known = Pointers.parent(known);
        }
        Place place = places.getOrDefault(known, Place.START);
        return new Mistake(place.line(), place.column(), Pointers.shown(pointer), message);
    }
}
