package slipway.reasoning.codes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.body.Side;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.codes.CodeEntry.CodeSide;

/** The diagnosis codes that ship with the program. */
public final class DiagnosisCodes {
    /** System of these codes in FHIR. */
    public static final String SYSTEM = "http://hl7.org/fhir/sid/icd-10-cm";

    private static final DiagnosisCodes BUNDLED = new DiagnosisCodes();
    private static final String CAUDA_EQUINA = "G83.4";

    private final Map<String, CodeEntry> byCode = new LinkedHashMap<>();
    private final List<Exclusion> exclusions;

    private record Exclusion(String family, String other, int kind) {
        boolean meets(String a, String b) {
            return (a.startsWith(family) && b.startsWith(other)) || (b.startsWith(family) && a.startsWith(other));
        }
    }

    private DiagnosisCodes() {
        for (CSVRecord row : ReasoningData.table("codes/icd10cm.csv")) {
            CodeEntry entry = entry(row);
            if (byCode.put(entry.code(), entry) != null) {
                throw new IllegalStateException("icd10cm.csv: " + entry.code() + " is given twice");
            }
        }
        exclusions = ReasoningData.table("codes/exclusions.csv").stream()
                .map(row -> new Exclusion(row.get("family"), row.get("other"), Integer.parseInt(row.get("kind"))))
                .toList();
    }

    private static CodeEntry entry(CSVRecord row) {
        return new CodeEntry(
                row.get("code"),
                "yes".equals(row.get("billable")),
                CodeSide.valueOf(row.get("side").toUpperCase(Locale.ROOT)),
                LocalDate.parse(row.get("validFrom")),
                Optional.of(row.get("validTo")).filter(text -> !text.isEmpty()).map(LocalDate::parse),
                row.get("words"),
                row.get("mark"),
                row.get("source"));
    }

    /** The codes of the program. */
    public static DiagnosisCodes bundled() {
        return BUNDLED;
    }

    /** The line of a code. */
    public Optional<CodeEntry> find(String code) {
        return Optional.ofNullable(byCode.get(code));
    }

    /** Codes that may be billed for a day of service, in the order of the list. */
    public List<CodeEntry> list(LocalDate service) {
        return byCode.values().stream().filter(entry -> entry.holds(service)).toList();
    }

    /**
     * Everything that is wrong with the codes of one claim.
     *
     * @param side of the episode, if it has one
     */
    public List<CodeProblem> check(List<String> codes, LocalDate service, Optional<Side> side) {
        var problems = new ArrayList<CodeProblem>();
        var seen = new HashSet<String>();
        for (String code : codes) {
            if (!seen.add(code)) {
                problems.add(new CodeProblem(CodeProblem.Kind.TWICE, true, code + " stands twice."));
            } else {
                one(code, service, side, problems);
            }
        }
        List<String> each = List.copyOf(seen);
        for (int i = 0; i < each.size(); i++) {
            for (int j = i + 1; j < each.size(); j++) {
                pair(each.get(i), each.get(j), problems);
            }
        }
        return problems;
    }

    private void one(String code, LocalDate service, Optional<Side> side, List<CodeProblem> problems) {
        Optional<CodeEntry> entry = find(code);
        if (entry.isEmpty()) {
            boolean family = byCode.keySet().stream().anyMatch(known -> known.startsWith(code) && !code.isEmpty());
            problems.add(
                    family
                            ? family(code)
                            : new CodeProblem(
                                    CodeProblem.Kind.NOT_IN_LIST,
                                    false,
                                    "%s is not in this program's small list; look it up.".formatted(code)));
            return;
        }
        dates(entry.get(), service, problems);
        side(entry.get(), side, problems);
        if (code.equals(CAUDA_EQUINA)) {
            problems.add(new CodeProblem(
                    CodeProblem.Kind.EMERGENCY, false, code + " is an emergency: refer now, no exercises."));
        }
    }

    private void dates(CodeEntry entry, LocalDate service, List<CodeProblem> problems) {
        if (!entry.billable()) {
            problems.add(family(entry.code()));
        } else if (service.isBefore(entry.validFrom())) {
            problems.add(reject(
                    CodeProblem.Kind.NOT_YET_VALID,
                    "%s holds for days of service from %s on, not for %s."
                            .formatted(entry.code(), entry.validFrom(), service)));
        } else if (entry.expired(service)) {
            problems.add(reject(
                    CodeProblem.Kind.NO_LONGER_VALID,
                    "%s holds for days of service before %s, not for %s."
                            .formatted(entry.code(), entry.validTo().orElseThrow(), service)));
        }
    }

    private static void side(CodeEntry entry, Optional<Side> side, List<CodeProblem> problems) {
        if (entry.side() == CodeSide.UNSPECIFIED) {
            problems.add(new CodeProblem(
                    CodeProblem.Kind.SIDE_OPEN,
                    false,
                    entry.code() + " leaves the side open; a code with a side exists."));
        }
        boolean onOneSide = entry.side() == CodeSide.RIGHT || entry.side() == CodeSide.LEFT;
        if (onOneSide
                && side.isPresent()
                && !side.get().name().equals(entry.side().name())) {
            problems.add(new CodeProblem(
                    CodeProblem.Kind.OTHER_SIDE,
                    false,
                    "%s names the %s side, the episode the %s."
                            .formatted(entry.code(), word(entry.side()), word(side.get()))));
        }
    }

    private void pair(String a, String b, List<CodeProblem> problems) {
        exclusions.stream()
                .filter(each -> each.kind() == 1 && each.meets(a, b))
                .findFirst()
                .ifPresent(each -> problems.add(new CodeProblem(
                        CodeProblem.Kind.EXCLUDES_EACH_OTHER,
                        false,
                        "%s and %s exclude each other for the same condition (Excludes1).".formatted(a, b))));
    }

    private static String word(Enum<?> side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    private static CodeProblem family(String code) {
        return reject(CodeProblem.Kind.NOT_BILLABLE, code + " names a family; a longer code is needed.");
    }

    private static CodeProblem reject(CodeProblem.Kind kind, String text) {
        return new CodeProblem(kind, true, text);
    }
}
