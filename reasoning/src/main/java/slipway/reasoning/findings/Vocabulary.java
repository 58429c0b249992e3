package slipway.reasoning.findings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.findings.Term.How;

/**
 * The words that an examination may use, per kind, from {@code findings/terms.csv} and {@code findings/places.csv}.
 * Besides the listed words it understands ranges of roots ({@code L4_to_S1_dermatomes}, {@code L5_S1_muscles}) and
 * {@code palpation_}, {@code tinel_} and {@code percussion_} before a listed place.
 */
public final class Vocabulary {
    private static final Vocabulary BUNDLED = read();

    private final Map<FindingKind, Map<String, Term>> terms;
    private final Map<String, List<String>> sitesOfPlaces;

    private Vocabulary(Map<FindingKind, Map<String, Term>> terms, Map<String, List<String>> sitesOfPlaces) {
        this.terms = terms;
        this.sitesOfPlaces = sitesOfPlaces;
    }

    /** The vocabulary that ships with the program. */
    public static Vocabulary load() {
        return BUNDLED;
    }

    /** What a word means; upper and lower case, spaces and hyphens make no difference. */
    public Optional<Term> find(FindingKind kind, String word) {
        String key = normalized(word);
        return Spellings.of(key).stream()
                .map(spelling -> findExact(kind, spelling))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Term> findExact(FindingKind kind, String key) {
        Term listed = of(kind).get(key.toLowerCase(Locale.ROOT));
        if (listed != null) {
            return Optional.of(listed);
        }
        if (kind == FindingKind.PROVOCATION) {
            return pressed(key);
        }
        Optional<Term> range = RootRange.parse(key).flatMap(roots -> roots.term(kind, of(kind)));
        // A complaint may be felt wherever skin can be tested.
        return range.isEmpty() && kind == FindingKind.SYMPTOM ? findExact(FindingKind.SENSATION, key) : range;
    }

    /** Whether the word is known for this kind of item. */
    public boolean knows(FindingKind kind, String word) {
        return find(kind, word).isPresent();
    }

    /** The known word nearest to an unknown one, by edit distance over its length; empty if nothing is near. */
    public Optional<String> nearest(FindingKind kind, String word) {
        String key = normalized(word).toLowerCase(Locale.ROOT);
        int tolerated = Math.max(2, key.length() / 3);
        return list(kind).stream()
                .min(Comparator.comparingInt(known -> distance(key, known.toLowerCase(Locale.ROOT))))
                .filter(known -> distance(key, known.toLowerCase(Locale.ROOT)) <= tolerated);
    }

    /** All listed words of a kind, in the order of the file. */
    public List<String> list(FindingKind kind) {
        var words = new ArrayList<>(of(kind).keySet());
        if (kind == FindingKind.SYMPTOM) {
            of(FindingKind.SENSATION).keySet().stream()
                    .filter(word -> !words.contains(word))
                    .forEach(words::add);
        }
        if (kind == FindingKind.PROVOCATION) {
            sitesOfPlaces.keySet().forEach(place -> Collections.addAll(words, "palpation_" + place, "tinel_" + place));
        }
        return Collections.unmodifiableList(words);
    }

    /** The sites that lie under a place that was pressed or tapped; empty list if the place is unknown. */
    public List<String> listSitesAt(String place) {
        return sitesOfPlaces.getOrDefault(place, List.of());
    }

    /** The word as it stands in data files: spaces and hyphens become underscores. */
    static String normalized(String word) {
        return word.strip().replaceAll("[\\s/-]+", "_");
    }

    private Optional<Term> pressed(String key) {
        return Pressed.parse(key.toLowerCase(Locale.ROOT))
                .flatMap(this::atKnownPlace)
                .map(pressed ->
                        new Term(FindingKind.PROVOCATION, pressed.key(), How.TARGET, Map.of(pressed.key(), 1.0)));
    }

    /** The place itself, or the longest known place that its name holds: {@code posterior_tibial_nerve_at_ankle}. */
    private Optional<Pressed> atKnownPlace(Pressed pressed) {
        if (sitesOfPlaces.containsKey(pressed.place())) {
            return Optional.of(pressed);
        }
        return sitesOfPlaces.keySet().stream()
                .filter(place -> ("_" + pressed.place() + "_").contains("_" + place + "_"))
                .max(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))
                .map(place -> new Pressed(pressed.tapped(), place));
    }

    private Map<String, Term> of(FindingKind kind) {
        return terms.getOrDefault(kind, Map.of());
    }

    private static Vocabulary read() {
        var terms = new EnumMap<FindingKind, Map<String, Term>>(FindingKind.class);
        List<CSVRecord> rows = ReasoningData.table("findings/terms.csv");
        rows.stream().filter(row -> !row.get("how").equals("same")).forEach(row -> add(terms, row, own(row)));
        // A synonym may stand above or below its word, and stand for another synonym further up.
        rows.stream().filter(row -> row.get("how").equals("same")).forEach(row -> add(terms, row, meant(terms, row)));
        var places = new LinkedHashMap<String, List<String>>();
        for (CSVRecord row : ReasoningData.table("findings/places.csv")) {
            places.put(row.get("place"), List.of(row.get("sites").split("\\s+")));
        }
        return new Vocabulary(terms, places);
    }

    private static void add(Map<FindingKind, Map<String, Term>> terms, CSVRecord row, Term term) {
        Term earlier = terms.computeIfAbsent(kind(row), kind -> new LinkedHashMap<>())
                .put(row.get("key").toLowerCase(Locale.ROOT), term);
        if (earlier != null) {
            throw new IllegalStateException("terms.csv: %s is listed twice".formatted(row.get("key")));
        }
    }

    private static Term own(CSVRecord row) {
        String key = row.get("key");
        return switch (row.get("how")) {
            case "target" -> new Term(kind(row), key, How.TARGET, Map.of(key, 1.0));
            case "mean" -> new Term(kind(row), key, How.MEAN, Weights.parse(row.get("members")));
            case "rest" -> new Term(kind(row), key, How.REST, Weights.parse(row.get("members")));
            default -> throw new IllegalStateException("terms.csv: %s: unknown how %s".formatted(key, row.get("how")));
        };
    }

    private static Term meant(Map<FindingKind, Map<String, Term>> terms, CSVRecord row) {
        String member = row.get("members").toLowerCase(Locale.ROOT);
        Term term = terms.getOrDefault(kind(row), Map.of()).get(member);
        if (term == null && kind(row) == FindingKind.SYMPTOM) {
            term = terms.getOrDefault(FindingKind.SENSATION, Map.of()).get(member);
        }
        if (term == null) {
            throw new IllegalStateException(
                    "terms.csv: %s stands for %s, which is not listed above".formatted(row.get("key"), member));
        }
        return term;
    }

    private static FindingKind kind(CSVRecord row) {
        return FindingKind.find(row.get("kind"))
                .orElseThrow(() -> new IllegalStateException("terms.csv: unknown kind " + row.get("kind")));
    }

    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int substituted = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(substituted, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
