package slipway.reasoning.findings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import slipway.reasoning.findings.Term.How;

/** Several roots named in one word: {@code L4_to_S1_dermatomes}, {@code L5_S1_muscles}. */
record RootRange(List<String> roots, boolean muscles) {
    private static final List<String> ORDER =
            List.of("C5", "C6", "C7", "C8", "T1", "T2", "L1", "L2", "L3", "L4", "L5", "S1", "S2", "S3", "S4", "S5");
    private static final Pattern NAME = Pattern.compile(
            "([CTLS]\\d)(?:_?(to|and|through)?_?([CTLS]\\d))?_(dermatomes?|distribution|areas?|skin|muscles?|myotomes?)",
            Pattern.CASE_INSENSITIVE);

    static Optional<RootRange> parse(String key) {
        var match = NAME.matcher(key);
        if (!match.matches()) {
            return Optional.empty();
        }
        int from = ORDER.indexOf(match.group(1).toUpperCase(Locale.ROOT));
        int to = match.group(3) == null ? from : ORDER.indexOf(match.group(3).toUpperCase(Locale.ROOT));
        if (from < 0 || to < from) {
            return Optional.empty();
        }
        boolean muscles = match.group(4).toLowerCase(Locale.ROOT).startsWith("m");
        boolean pair = "and".equalsIgnoreCase(match.group(2));
        List<String> roots = pair ? List.of(ORDER.get(from), ORDER.get(to)) : ORDER.subList(from, to + 1);
        return Optional.of(new RootRange(roots, muscles));
    }

    /** One patch or movement made of those of the single roots, equally; empty if one of them is not listed. */
    Optional<Term> term(FindingKind kind, Map<String, Term> listed) {
        if (muscles != (kind == FindingKind.STRENGTH) || (!muscles && kind != FindingKind.SENSATION)) {
            return Optional.empty();
        }
        String suffix = muscles ? "_muscles" : "_dermatome";
        var members = new LinkedHashMap<String, Double>();
        for (String root : roots) {
            Term single = listed.get((root + suffix).toLowerCase(Locale.ROOT));
            if (single == null) {
                return Optional.empty();
            }
            single.members().forEach((target, weight) -> members.merge(target, weight / roots.size(), Double::sum));
        }
        String key = String.join("_", roots) + suffix + (roots.size() > 1 ? "s" : "");
        return Optional.of(new Term(kind, key, How.MEAN, members));
    }
}
