package slipway.reasoning.codes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.body.Side;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.codes.CodeEntry.CodeSide;

/**
 * The diagnosis codes in use: those that a clinic has loaded, and below them the small set that ships with the program.
 *
 * <p>The clinic's list speaks for a code from the first day that it gives for it: a code that the clinic has ended does
 * not come back from below. For days before that the shipped line is asked.
 */
public final class DiagnosisCodes {
    /** System of these codes in FHIR. */
    public static final String SYSTEM = "http://hl7.org/fhir/sid/icd-10-cm";

    private static final CodeSet SHIPPED = new CodeSet(
            ReasoningData.table("codes/icd10cm.csv").stream()
                    .map(DiagnosisCodes::entry)
                    .toList(),
            ReasoningData.table("codes/exclusions.csv").stream()
                    .map(row -> new CodeExclusion(
                            row.get("family"), row.get("other"), Integer.parseInt(row.get("kind")), row.get("source")))
                    .toList());
    private static final Map<String, List<CodeEntry>> SHIPPED_BY_CODE = SHIPPED.byCode();
    private static final DiagnosisCodes BUNDLED = new DiagnosisCodes(CodeSet.EMPTY);
    private static final String CAUDA_EQUINA = "G83.4";

    private final CodeSet own;
    private final Map<String, List<CodeEntry>> ownByCode;

    private DiagnosisCodes(CodeSet own) {
        this.own = own;
        this.ownByCode = own.byCode();
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

    /** The codes of a clinic, above those of the program. */
    public static DiagnosisCodes of(CodeSet clinic) {
        return clinic.entries().isEmpty() && clinic.exclusions().isEmpty() ? BUNDLED : new DiagnosisCodes(clinic);
    }

    /** Whether there is a line of this code for some day. */
    public boolean knows(String code) {
        return ownByCode.containsKey(code) || SHIPPED_BY_CODE.containsKey(code);
    }

    /**
     * The line of a code on a day; if it has none on this day, the last one before, otherwise the first one after: which
     * it is tells {@link CodeEntry#validFrom} and {@link CodeEntry#validTo}.
     */
    public Optional<CodeEntry> find(String code, LocalDate service) {
        List<CodeEntry> ours = ownByCode.getOrDefault(code, List.of());
        List<CodeEntry> shipped = SHIPPED_BY_CODE.getOrDefault(code, List.of());
        return begun(ours, service)
                .or(() -> begun(shipped, service))
                .or(() -> ours.stream().findFirst())
                .or(() -> shipped.stream().findFirst());
    }

    private static Optional<CodeEntry> begun(List<CodeEntry> lines, LocalDate service) {
        return lines.stream()
                .filter(line -> !service.isBefore(line.validFrom()))
                .reduce((first, second) -> second);
    }

    /** Codes that may be billed for a day of service, in the order of the codes. */
    public List<CodeEntry> list(LocalDate service) {
        return codes().stream()
                .map(code -> find(code, service).orElseThrow())
                .filter(entry -> entry.holds(service))
                .toList();
    }

    /** Every line in use, in the order of the codes: those of the clinic, and those shipped for codes that it does not name. */
    public List<CodeEntry> lines() {
        return codes().stream()
                .flatMap(code -> ownByCode.getOrDefault(code, SHIPPED_BY_CODE.getOrDefault(code, List.of())).stream())
                .toList();
    }

    private SortedSet<String> codes() {
        var all = new TreeSet<>(SHIPPED_BY_CODE.keySet());
        all.addAll(ownByCode.keySet());
        return all;
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
        Optional<CodeEntry> entry = find(code, service);
        if (entry.isEmpty()) {
            boolean family = codes().stream().anyMatch(known -> known.startsWith(code) && !code.isEmpty());
            problems.add(
                    family
                            ? family(code)
                            : new CodeProblem(
                                    CodeProblem.Kind.NOT_IN_LIST,
                                    false,
                                    "%s is in no list of this clinic or of the program; look it up.".formatted(code)));
            return;
        }
        dates(entry.get(), service, problems);
        side(entry.get(), side, problems);
        if (code.equals(CAUDA_EQUINA)) {
            problems.add(new CodeProblem(
                    CodeProblem.Kind.EMERGENCY, false, code + " is an emergency: refer now, no exercises."));
        }
    }

    private static void dates(CodeEntry entry, LocalDate service, List<CodeProblem> problems) {
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
        Stream.concat(
                        own.exclusions().stream(),
                        SHIPPED.exclusions().stream()
                                .filter(shipped -> own.exclusions().stream().noneMatch(shipped::isAboutSame)))
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
