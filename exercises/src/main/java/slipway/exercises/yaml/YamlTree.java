package slipway.exercises.yaml;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ContainerNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * YAML text as a JSON tree, with the place of each key and list entry and every mistake on the way. Works on the
 * parser's events rather than on a loaded object: places survive, a repeated key is seen, and no input exhausts the
 * stack or the memory.
 */
final class YamlTree {
    static final int MAX_DEPTH = 20;

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final Map<String, Place> places = new HashMap<>();
    private final List<Mistake> mistakes = new ArrayList<>();
    private final Deque<Frame> open = new ArrayDeque<>();
    private @Nullable JsonNode root;
    private int documents;

    private YamlTree() {}

    /** Reads a text; whatever is wrong with it is among the mistakes afterwards. */
    static YamlTree read(String text) {
        var tree = new YamlTree();
        try {
            tree.readEvents(text);
        } catch (MarkedYamlEngineException e) {
            tree.giveUp(Place.of(e.getProblemMark()), "the file is not YAML: " + oneLine(e.getProblem()));
        } catch (YamlEngineException e) {
            tree.giveUp(Place.START, "the file is not YAML: " + oneLine(e.getMessage()));
        } catch (NumberFormatException e) {
            // What the scanner of the library throws on "\\x" without its two digits; it does not say where.
            tree.giveUp(Place.START, "the file is not YAML: a \\ in a quoted text is followed by no known letter");
        }
        return tree;
    }

    /** The data, if the text could be read to its end. */
    Optional<JsonNode> root() {
        return Optional.ofNullable(root);
    }

    /** Where each key and each list entry stands, by JSON pointer. */
    Map<String, Place> places() {
        return places;
    }

    List<Mistake> mistakes() {
        return mistakes;
    }

    private void readEvents(String text) {
        // The caller has bounded the length; the library's own bound would only say less clearly the same.
        var settings = LoadSettings.builder()
                .setUseMarks(true)
                .setCodePointLimit(Integer.MAX_VALUE)
                .build();
        for (Event event : new Parse(settings).parseString(text)) {
            if (!take(event, Place.of(event.getStartMark()))) {
                return;
            }
        }
    }

    /** Takes one event; false if going on makes no sense. */
    private boolean take(Event event, Place place) {
        switch (event.getEventId()) {
            case DocumentStart -> documents++;
            case MappingEnd, SequenceEnd -> open.pop();
            case Alias -> {
                return giveUp(place, "anchors (&) and aliases (*) are not taken; write the value out");
            }
            case Scalar -> scalar((ScalarEvent) event, place);
            case MappingStart -> container((CollectionStartEvent) event, JSON.objectNode(), place);
            case SequenceStart -> container((CollectionStartEvent) event, JSON.arrayNode(), place);
            default -> {}
        }
        if (documents > 1) {
            return giveUp(place, "the file must hold one document, had several");
        }
        return open.size() <= MAX_DEPTH || giveUp(place, "data must be nested at most %d deep".formatted(MAX_DEPTH));
    }

    private void container(CollectionStartEvent event, ContainerNode<?> node, Place place) {
        refuseExtras(event.getAnchor(), event.getTag(), place);
        if (expectsKey()) {
            mistake(place, "", "a key must be a word, was a list or an object");
            key("?", place);
        }
        open.push(new Frame(node, put(node, place)));
    }

    private void scalar(ScalarEvent event, Place place) {
        refuseExtras(event.getAnchor(), event.getTag(), place);
        if (expectsKey()) {
            key(event.getValue(), place);
        } else {
            put(YamlScalars.node(event), place);
        }
    }

    private void refuseExtras(Optional<Anchor> anchor, Optional<String> tag, Place place) {
        anchor.ifPresent(name -> mistake(
                place,
                "",
                "anchors (&) and aliases (*) are not taken, was &" + NearestWord.shortened(name.getValue())));
        tag.ifPresent(name -> mistake(place, "", "tags (!) are not taken, was " + NearestWord.shortened(name)));
    }

    private boolean expectsKey() {
        Frame frame = open.peek();
        return frame != null && frame.node instanceof ObjectNode && frame.key == null;
    }

    private void key(String key, Place place) {
        Frame frame = open.element();
        String pointer = Pointers.child(frame.pointer, key);
        frame.key = key;
        frame.repeated = frame.node.has(key);
        if (frame.repeated) {
            mistake(
                    place,
                    pointer,
                    "duplicate key, first given on line %d"
                            .formatted(places.getOrDefault(pointer, Place.START).line()));
        } else {
            places.put(pointer, place);
        }
    }

    /** Puts a node where it belongs and gives its pointer. Of a repeated key the first value counts. */
    private String put(JsonNode node, Place place) {
        Frame frame = open.peek();
        if (frame == null) {
            root = node;
            return "";
        }
        if (frame.node instanceof ArrayNode list) {
            String pointer = Pointers.child(frame.pointer, list.size());
            list.add(node);
            places.put(pointer, place);
            return pointer;
        }
        String key = String.valueOf(frame.key);
        frame.key = null;
        if (!frame.repeated) {
            ((ObjectNode) frame.node).set(key, node);
        }
        return Pointers.child(frame.pointer, key);
    }

    private void mistake(Place place, String pointer, String message) {
        mistakes.add(new Mistake(place.line(), place.column(), Pointers.shown(pointer), message));
    }

    /** Drops the data; always false. */
    private boolean giveUp(Place place, String message) {
        root = null;
        mistake(place, "", message);
        return false;
    }

    private static String oneLine(@Nullable String text) {
        return text == null ? "unreadable" : NearestWord.shortened(text.strip());
    }

    /** An object or list that is still open. */
    private static final class Frame {
        final ContainerNode<?> node;
        final String pointer;

        @Nullable
        String key;

        boolean repeated;

        Frame(ContainerNode<?> node, String pointer) {
            this.node = node;
            this.pointer = pointer;
        }
    }
}
