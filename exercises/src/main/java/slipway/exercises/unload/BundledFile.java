package slipway.exercises.unload;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import slipway.exercises.exercise.Phrase;
import slipway.exercises.yaml.MistakesException;
import slipway.exercises.yaml.YamlDocument;
import slipway.exercises.yaml.YamlSchema;
import tools.jackson.databind.JsonNode;

/** Reads a file that ships with the program and keeps to its schema. */
final class BundledFile {
    private static final String FOLDER = "/slipway/exercises/";

    private BundledFile() {}

    /** The tree of {@code name.yaml}, checked against {@code name.schema.json}. */
    static JsonNode read(String name) {
        String resource = FOLDER + name + ".yaml";
        try (var stream = BundledFile.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without " + resource);
            }
            YamlDocument document = YamlDocument.read(name + ".yaml", stream.readAllBytes());
            var mistakes = YamlSchema.load(FOLDER + name + ".schema.json").check(document);
            if (!mistakes.isEmpty()) {
                throw new MistakesException(name + ".yaml", mistakes);
            }
            return document.root();
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled file " + resource + " cannot be read", e);
        }
    }

    static Phrase phrase(JsonNode node) {
        return new Phrase(node.path("en").asString(), node.path("es").asString());
    }

    static List<Phrase> phrases(JsonNode list) {
        var phrases = new ArrayList<Phrase>();
        list.forEach(node -> phrases.add(phrase(node)));
        return phrases;
    }

    static List<String> texts(JsonNode list) {
        var texts = new ArrayList<String>();
        list.forEach(node -> texts.add(node.asString()));
        return texts;
    }
}
