package slipway.exercises.catalogue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.format.ExerciseReader;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.MistakesException;
import slipway.exercises.yaml.NearestWord;

/** A set of exercises by id, in the order of its index. Immutable. */
public final class Catalogue {
    private static final String FOLDER = "/slipway/exercises/catalogue/";

    private final Map<String, Exercise> byId;

    private Catalogue(Map<String, Exercise> byId) {
        this.byId = Collections.unmodifiableMap(byId);
    }

    /** The exercises that ship with the program. */
    public static Catalogue bundled() {
        return Bundled.CATALOGUE;
    }

    /** The exercise of this id. */
    public Optional<Exercise> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * The exercise of this id.
     *
     * @throws IllegalArgumentException naming the nearest known one
     */
    public Exercise get(String id) {
        return find(id).orElseThrow(
                        () -> new IllegalArgumentException(NearestWord.complaint("exercise", id, byId.keySet())));
    }

    /** All exercises in order. */
    public List<Exercise> list() {
        return List.copyOf(byId.values());
    }

    /** All ids in order. */
    public Set<String> ids() {
        return byId.keySet();
    }

    /** The file of an exercise that ships with the program, as a start for one's own. */
    public static Optional<String> bundledText(String id) {
        return bundled().find(id).map(exercise -> new String(bytes(FOLDER + id + ".yaml"), StandardCharsets.UTF_8));
    }

    private static byte[] bytes(String resource) {
        try (var stream = Catalogue.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without " + resource);
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled file " + resource + " cannot be read", e);
        }
    }

    private static final class Bundled {
        static final Catalogue CATALOGUE = load();

        private static Catalogue load() {
            var ids = new String(bytes(FOLDER + "index.txt"), StandardCharsets.UTF_8)
                    .lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .toList();
            var byId = new LinkedHashMap<String, Exercise>();
            var mistakes = new ArrayList<Mistake>();
            for (String id : ids) {
                String file = id + ".yaml";
                try {
                    Exercise exercise = ExerciseReader.read(file, bytes(FOLDER + file), ids);
                    if (!exercise.id().equals(id) || byId.put(id, exercise) != null) {
                        mistakes.add(new Mistake(
                                1, 1, file, "the id must be the file name and unique, was " + exercise.id()));
                    }
                } catch (MistakesException e) {
                    e.mistakes()
                            .forEach(mistake -> mistakes.add(new Mistake(
                                    mistake.line(), mistake.column(), file + " " + mistake.path(), mistake.message())));
                }
            }
            if (!mistakes.isEmpty()) {
                throw new MistakesException("catalogue", mistakes);
            }
            return new Catalogue(byId);
        }
    }
}
