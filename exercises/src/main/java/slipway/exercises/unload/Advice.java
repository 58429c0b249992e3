package slipway.exercises.unload;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slipway.exercises.exercise.Indication;
import slipway.exercises.exercise.Phrase;
import slipway.exercises.yaml.NearestWord;
import tools.jackson.databind.JsonNode;

/**
 * A habit or position to change ({@code unload.yaml}).
 *
 * @param id name in files
 * @param triggers what in the history or the findings calls for it, for example {@code crossed legs}
 * @param sites where it helps
 * @param basis source or mark
 * @param title heading
 * @param doInstead what to do
 * @param avoid what not to do
 */
public record Advice(
        String id,
        List<String> triggers,
        Set<Indication> sites,
        String basis,
        Phrase title,
        List<Phrase> doInstead,
        List<Phrase> avoid) {
    private static final Map<String, Advice> ALL = load();

    public Advice {
        triggers = List.copyOf(triggers);
        sites = Set.copyOf(sites);
        doInstead = List.copyOf(doInstead);
        avoid = List.copyOf(avoid);
    }

    /** All advice in the order of the file. */
    public static List<Advice> list() {
        return List.copyOf(ALL.values());
    }

    /**
     * The advice of this id.
     *
     * @throws IllegalArgumentException naming the nearest known one
     */
    public static Advice get(String id) {
        Advice advice = ALL.get(id);
        if (advice == null) {
            throw new IllegalArgumentException(NearestWord.complaint("advice", id, ALL.keySet()));
        }
        return advice;
    }

    /** The words that call for some advice, in the order of the file. */
    public static List<String> listTriggers() {
        return ALL.values().stream()
                .flatMap(advice -> advice.triggers.stream())
                .distinct()
                .toList();
    }

    /** Everything that a patient reads, the heading first. */
    public List<Phrase> patientTexts() {
        return Stream.of(List.of(title), doInstead, avoid).flatMap(List::stream).toList();
    }

    private static Map<String, Advice> load() {
        var all = new LinkedHashMap<String, Advice>();
        for (JsonNode node : BundledFile.read("unload").path("advice")) {
            Advice advice = of(node);
            if (all.put(advice.id, advice) != null) {
                throw new IllegalStateException("unload.yaml: the id " + advice.id + " is given twice");
            }
        }
        return all;
    }

    private static Advice of(JsonNode node) {
        return new Advice(
                node.path("id").asString(),
                BundledFile.texts(node.path("triggers")),
                BundledFile.texts(node.path("sites")).stream()
                        .map(key -> Indication.find(key).orElseThrow())
                        .collect(Collectors.toSet()),
                node.path("basis").asString(),
                BundledFile.phrase(node.path("title")),
                BundledFile.phrases(node.path("do")),
                BundledFile.phrases(node.path("avoid")));
    }
}
