package slipway.care.codes;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slipway.care.table.Cell;
import slipway.care.table.CsvTable;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.MistakesException;
import slipway.reasoning.codes.CodeEntry;
import slipway.reasoning.codes.CodeExclusion;

/** Reads and writes the two files of a clinic's codes. Either all of a file can be used or nothing is taken. */
public final class CodesFile {
    /** Largest file of codes that is read: some five thousand lines. */
    public static final int MAX_BYTES = 400_000;

    /** Largest file of exclusions. */
    public static final int MAX_EXCLUSION_BYTES = 50_000;

    /** Columns of the file of codes. */
    public static final List<String> COLUMNS =
            List.of("code", "billable", "side", "validFrom", "validTo", "words", "source");

    /** Columns of the file of exclusions. */
    public static final List<String> EXCLUSION_COLUMNS = List.of("family", "other", "kind", "source");

    private CodesFile() {}

    /** A line with where it stands. */
    private record Placed(CodeEntry entry, Cell at) {}

    /**
     * The lines of a file of codes.
     *
     * @param source name for messages
     * @throws MistakesException naming every mistake with line and column
     */
    public static List<CodeEntry> codes(String source, byte[] bytes) {
        var mistakes = new ArrayList<Mistake>();
        var placed = new ArrayList<Placed>();
        for (List<Cell> cells : CsvTable.rows(bytes, MAX_BYTES, COLUMNS, mistakes)) {
            new CodeRow(cells, COLUMNS, mistakes)
                    .entry()
                    .ifPresent(entry -> placed.add(new Placed(entry, cells.get(0))));
        }
        twice(placed, mistakes);
        refuse(source, mistakes);
        return placed.stream().map(Placed::entry).toList();
    }

    /**
     * The lines of a file of exclusions.
     *
     * @param source name for messages
     * @throws MistakesException naming every mistake with line and column
     */
    public static List<CodeExclusion> exclusions(String source, byte[] bytes) {
        var mistakes = new ArrayList<Mistake>();
        var exclusions = new ArrayList<CodeExclusion>();
        for (List<Cell> cells : CsvTable.rows(bytes, MAX_EXCLUSION_BYTES, EXCLUSION_COLUMNS, mistakes)) {
            var row = new CodeRow(cells, EXCLUSION_COLUMNS, mistakes);
            row.exclusion().ifPresent(exclusion -> {
                if (exclusions.stream().anyMatch(exclusion::isAboutSame)) {
                    row.add(
                            "family",
                            "%s and %s stand in the file twice".formatted(exclusion.family(), exclusion.other()));
                }
                exclusions.add(exclusion);
            });
        }
        refuse(source, mistakes);
        return List.copyOf(exclusions);
    }

    private static void refuse(String source, List<Mistake> mistakes) {
        if (!mistakes.isEmpty()) {
            throw new MistakesException(source, mistakes);
        }
    }

    /** Of one code no two lines may hold on the same day. */
    private static void twice(List<Placed> placed, List<Mistake> mistakes) {
        List<Placed> sorted = placed.stream()
                .sorted(Comparator.comparing((Placed each) -> each.entry().code())
                        .thenComparing(each -> each.entry().validFrom()))
                .toList();
        for (int i = 1; i < sorted.size(); i++) {
            Placed one = sorted.get(i - 1);
            Placed other = sorted.get(i);
            if (one.entry().overlaps(other.entry())) {
                boolean turned = one.at().line() > other.at().line();
                Placed later = turned ? one : other;
                Placed earlier = turned ? other : one;
                mistakes.add(new Mistake(
                        later.at().line(),
                        later.at().column(),
                        "code",
                        "%s holds on %s by line %d already; of one code only one line may hold on a day"
                                .formatted(
                                        other.entry().code(),
                                        other.entry().validFrom(),
                                        earlier.at().line())));
            }
        }
    }

    /** The lines as a file that is read as the same lines. */
    public static byte[] codesFile(List<CodeEntry> entries) {
        return file(
                COLUMNS,
                entries.stream()
                        .map(each -> List.of(
                                each.code(),
                                each.billable() ? "yes" : "no",
                                each.side().name().toLowerCase(Locale.ROOT),
                                each.validFrom().toString(),
                                each.validTo().map(String::valueOf).orElse(""),
                                each.words(),
                                each.source())));
    }

    /** The exclusions as a file that is read as the same. */
    public static byte[] exclusionsFile(List<CodeExclusion> exclusions) {
        return file(
                EXCLUSION_COLUMNS,
                exclusions.stream()
                        .map(each -> List.of(each.family(), each.other(), String.valueOf(each.kind()), each.source())));
    }

    private static byte[] file(List<String> columns, Stream<List<String>> rows) {
        return Stream.concat(Stream.of(columns), rows)
                .map(row -> row.stream().map(CodesFile::quoted).collect(Collectors.joining(",", "", "\n")))
                .collect(Collectors.joining())
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String quoted(String cell) {
        boolean plain = Optional.of(cell)
                .filter(text -> text.matches("[\\p{L}\\p{N} .;:()/_-]*"))
                .isPresent();
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
