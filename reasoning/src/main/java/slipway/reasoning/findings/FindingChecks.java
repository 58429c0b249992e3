package slipway.reasoning.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rules that a set of findings must keep together. */
public final class FindingChecks {
    private FindingChecks() {}

    /**
     * All breaches at once, empty if none: an unknown target (with the nearest known word), and two different results
     * for one item on one side, which no examination can have.
     */
    public static List<String> mistakes(List<Finding> findings, Vocabulary vocabulary) {
        var mistakes = new ArrayList<String>();
        for (Finding finding : findings) {
            if (!vocabulary.knows(finding.kind(), finding.target())) {
                mistakes.add(unknown(finding, vocabulary));
            }
        }
        mistakes.addAll(contradictions(findings, vocabulary));
        return mistakes;
    }

    /** Only the contradictions among {@link #mistakes}. */
    public static List<String> contradictions(List<Finding> findings, Vocabulary vocabulary) {
        return conflicts(findings, vocabulary).stream().map(Conflict::text).toList();
    }

    /**
     * Two findings that cannot both be.
     *
     * @param later index of the later one in the list
     * @param earlier index of the earlier one
     */
    public record Conflict(int earlier, int later, String text) {}

    /** The contradictions with the findings that make them. */
    public static List<Conflict> conflicts(List<Finding> findings, Vocabulary vocabulary) {
        var mistakes = new ArrayList<Conflict>();
        Map<String, Integer> seen = new LinkedHashMap<>();
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            if (finding.kind() == FindingKind.SYMPTOM) {
                continue; // pain and tingling may share one place
            }
            String key = vocabulary
                    .find(finding.kind(), finding.target())
                    .map(Term::key)
                    .orElse(finding.target());
            String place = finding.kind() + " " + key + " " + finding.side();
            int first = seen.getOrDefault(place, i);
            seen.put(place, first);
            Finding earlier = findings.get(first);
            if (!earlier.result().equals(finding.result())) {
                mistakes.add(new Conflict(
                        first,
                        i,
                        "%s%s contradicts %s%s: one item has one result on one side"
                                .formatted(finding.text(), at(finding), earlier.text(), at(earlier))));
            }
        }
        return mistakes;
    }

    private static String unknown(Finding finding, Vocabulary vocabulary) {
        String near = vocabulary
                .nearest(finding.kind(), finding.target())
                .map(word -> "; nearest known: " + word)
                .orElse("");
        return "unknown %s item \"%s\"%s%s".formatted(finding.kind().key(), finding.target(), near, at(finding));
    }

    private static String at(Finding finding) {
        return finding.location().isEmpty() ? "" : " (" + finding.location() + ")";
    }
}
