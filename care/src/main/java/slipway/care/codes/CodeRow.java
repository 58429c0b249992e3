package slipway.care.codes;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import slipway.care.table.Cell;
import slipway.exercises.yaml.Mistake;
import slipway.reasoning.codes.CodeEntry;
import slipway.reasoning.codes.CodeEntry.CodeSide;
import slipway.reasoning.codes.CodeExclusion;

/** One row of a file of codes or exclusions. */
final class CodeRow {
    private static final int MOST_LETTERS = 200;
    /** Where a line comes from that a clinic has loaded; the lines that ship are marked otherwise. */
    private static final String MARK = "clinic";

    private final List<Cell> cells;
    private final List<String> columns;
    private final List<Mistake> mistakes;
    private boolean broken;

    CodeRow(List<Cell> cells, List<String> columns, List<Mistake> mistakes) {
        this.cells = cells;
        this.columns = columns;
        this.mistakes = mistakes;
    }

    private Cell cell(String column) {
        return cells.get(columns.indexOf(column));
    }

    void add(String column, String message) {
        Cell at = cell(column);
        broken = true;
        mistakes.add(new Mistake(at.line(), at.column(), column, message));
    }

    Optional<CodeEntry> entry() {
        String code = matching("code", "[A-Z][0-9][0-9A-Z]([.][0-9A-Z]{1,4})?", "a code like G57.01");
        String billable = matching("billable", "yes|no", "yes or no");
        String side = matching("side", sides(), "one of " + sides().replace("|", ", "));
        Optional<LocalDate> from = day("validFrom");
        Optional<LocalDate> to = cell("validTo").blank() ? Optional.empty() : day("validTo");
        if (cell("validFrom").blank()) {
            add("validFrom", "is missing; it is the first day of service for which the line holds");
        }
        if (from.isPresent() && to.filter(end -> !end.isAfter(from.get())).isPresent()) {
            add("validTo", "must be after validFrom %s, was %s".formatted(from.get(), to.get()));
        }
        String words = words("words");
        String source = words("source");
        return broken
                ? Optional.empty()
                : Optional.of(new CodeEntry(
                        code,
                        billable.equals("yes"),
                        CodeSide.valueOf(side.toUpperCase(Locale.ROOT)),
                        from.orElseThrow(),
                        to,
                        words,
                        MARK,
                        source));
    }

    Optional<CodeExclusion> exclusion() {
        String form = "[A-Z][0-9][0-9A-Z]([.][0-9A-Z]{0,4})?";
        String family = matching("family", form, "the beginning of codes, like G57.0");
        String other = matching("other", form, "the beginning of codes, like M54.3");
        String kind = matching("kind", "[12]", "1 (never together) or 2 (together if both are there)");
        String source = words("source");
        return broken
                ? Optional.empty()
                : Optional.of(new CodeExclusion(family, other, Integer.parseInt(kind), source));
    }

    private static String sides() {
        return Arrays.stream(CodeSide.values())
                .map(side -> side.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining("|"));
    }

    private String matching(String column, String form, String rule) {
        String text = cell(column).text();
        if (!text.matches(form)) {
            add(column, "must be %s, was \"%s\"".formatted(rule, shown(text)));
        }
        return text;
    }

    private Optional<LocalDate> day(String column) {
        String text = cell(column).text();
        try {
            if (text.matches("[12][0-9]{3}-[0-9]{2}-[0-9]{2}")) {
                return Optional.of(LocalDate.parse(text));
            }
        } catch (DateTimeParseException e) {
            // Said below, as for what has not even the form of a day.
        }
        if (!text.isEmpty()) {
            add(column, "must be a day like 2026-10-01, was \"%s\"".formatted(shown(text)));
        }
        return Optional.empty();
    }

    /** Words that can stand on a page and a paper as they are. */
    private String words(String column) {
        String text = cell(column).text();
        if (text.isEmpty() || text.length() > MOST_LETTERS) {
            add(column, "must have 1 to %d letters, had %d".formatted(MOST_LETTERS, text.length()));
        } else if (!text.matches("[^\\p{C}<>\\p{Zl}\\p{Zp}]*")) {
            add(column, "must have no < or > and no control characters, was \"%s\"".formatted(shown(text)));
        }
        return text;
    }

    private static String shown(String text) {
        String start = text.length() > 40 ? text.substring(0, 40) + "..." : text;
        return start.replaceAll("\\p{C}", "?");
    }
}
