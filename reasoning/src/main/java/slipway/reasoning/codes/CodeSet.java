package slipway.reasoning.codes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A list of codes with their days, and what excludes each other.
 *
 * @param entries in the order of codes and of the days from which they hold; of one code no two hold on the same day
 */
public record CodeSet(List<CodeEntry> entries, List<CodeExclusion> exclusions) {
    private static final Comparator<CodeEntry> ORDER =
            Comparator.comparing(CodeEntry::code).thenComparing(CodeEntry::validFrom);

    /** No code at all; after the order, which it needs. */
    public static final CodeSet EMPTY = new CodeSet(List.of(), List.of());

    public CodeSet {
        entries = entries.stream().sorted(ORDER).toList();
        exclusions = List.copyOf(exclusions);
        for (int i = 1; i < entries.size(); i++) {
            CodeEntry before = entries.get(i - 1);
            if (before.overlaps(entries.get(i))) {
                throw new IllegalArgumentException("%s is given twice for %s"
                        .formatted(before.code(), entries.get(i).validFrom()));
            }
        }
    }

    /** The lines of each code, in the order of their days. */
    Map<String, List<CodeEntry>> byCode() {
        var byCode = new LinkedHashMap<String, List<CodeEntry>>();
        for (CodeEntry entry : entries) {
            byCode.computeIfAbsent(entry.code(), code -> new ArrayList<>()).add(entry);
        }
        return byCode;
    }
}
