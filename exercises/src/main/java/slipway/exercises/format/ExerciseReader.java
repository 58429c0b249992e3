package slipway.exercises.format;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.MistakesException;
import slipway.exercises.yaml.NearestWord;
import slipway.exercises.yaml.YamlDocument;
import slipway.exercises.yaml.YamlSchema;
import tools.jackson.databind.JsonNode;

/** Reads an exercise from its file. */
public final class ExerciseReader {
    private static final YamlSchema SCHEMA = YamlSchema.load("/slipway/exercises/exercise.schema.json");

    private ExerciseReader() {}

    /** The JSON schema of exercise files, as text. */
    public static String schemaText() {
        return SCHEMA.text();
    }

    /**
     * The exercise in a file whose neighbours are not checked.
     *
     * @param source name of the file for messages
     * @throws MistakesException with everything that is wrong; nothing else is thrown
     */
    public static Exercise read(String source, byte[] bytes) {
        return read(source, bytes, Set.of());
    }

    /**
     * The exercise in a file.
     *
     * @param source name of the file for messages
     * @param knownIds the exercises that may be named as neighbours; empty for no check
     * @throws MistakesException with everything that is wrong; nothing else is thrown
     */
    public static Exercise read(String source, byte[] bytes, Collection<String> knownIds) {
        YamlDocument document = YamlDocument.read(source, bytes);
        var mistakes = new ArrayList<Mistake>(SCHEMA.check(document));
        PoseTexts poses = PoseTexts.read(document, mistakes);
        checkNeighbours(document, knownIds, mistakes);
        if (!mistakes.isEmpty()) {
            throw new MistakesException(source, mistakes);
        }
        Exercise exercise = ExerciseTree.build(document, poses);
        mistakes.addAll(MovementChecks.check(document, exercise));
        mistakes.addAll(WordingChecks.check(document, exercise));
        if (!mistakes.isEmpty()) {
            throw new MistakesException(source, mistakes);
        }
        return exercise;
    }

    private static void checkNeighbours(YamlDocument document, Collection<String> knownIds, List<Mistake> mistakes) {
        String own = document.root().path("id").asString("");
        for (String key : List.of("easier", "harder")) {
            JsonNode neighbours = document.root().path(key);
            for (int i = 0; i < neighbours.size(); i++) {
                String id = neighbours.path(i).asString("");
                String pointer = "/" + key + "/" + i;
                if (id.equals(own)) {
                    mistakes.add(document.mistake(pointer, "an exercise cannot be its own neighbour"));
                } else if (!knownIds.isEmpty() && !knownIds.contains(id)) {
                    mistakes.add(document.mistake(pointer, NearestWord.complaint("exercise", id, knownIds)));
                }
            }
        }
    }
}
