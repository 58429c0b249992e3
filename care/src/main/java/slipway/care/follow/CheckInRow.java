package slipway.care.follow;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import slipway.care.table.Cell;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.NearestWord;
import slipway.reasoning.response.checkin.Coded;

/** Reads the values of one row; each that cannot be read adds a mistake and looks absent. */
final class CheckInRow {
    /** What settle_minutes says when it had not settled. */
    static final String NOT_SETTLED = "not settled";

    private final List<Cell> cells;
    private final List<Mistake> mistakes;
    private boolean broken;

    CheckInRow(List<Cell> cells, List<Mistake> mistakes) {
        this.cells = cells;
        this.mistakes = mistakes;
    }

    /** Whether any value of the row could not be read. */
    boolean broken() {
        return broken;
    }

    int line() {
        return cells.get(0).line();
    }

    void add(CheckInColumn column, String message) {
        Cell cell = cell(column);
        broken = true;
        mistakes.add(new Mistake(cell.line(), cell.column(), column.key(), message));
    }

    private Cell cell(CheckInColumn column) {
        return cells.get(column.ordinal());
    }

    boolean has(CheckInColumn column) {
        return !cell(column).blank();
    }

    Optional<String> text(CheckInColumn column) {
        return Optional.of(cell(column).text()).filter(text -> !text.isEmpty());
    }

    /** A value that must be there. */
    String required(CheckInColumn column) {
        if (!has(column)) {
            add(column, "is missing; every row needs it");
        }
        return cell(column).text();
    }

    OptionalInt whole(CheckInColumn column, int most) {
        if (!has(column)) {
            return OptionalInt.empty();
        }
        String text = cell(column).text();
        if (text.matches("[0-9]{1,6}") && Integer.parseInt(text) <= most) {
            return OptionalInt.of(Integer.parseInt(text));
        }
        add(column, "must be a whole number within 0 and %d, was \"%s\"".formatted(most, text));
        return OptionalInt.empty();
    }

    OptionalDouble minutes(CheckInColumn column, double most) {
        if (!has(column)) {
            return OptionalDouble.empty();
        }
        String text = cell(column).text();
        if (text.equals(NOT_SETTLED)) {
            return OptionalDouble.of(Double.POSITIVE_INFINITY);
        }
        if (text.matches("[0-9]{1,6}([.][0-9]{1,3})?") && Double.parseDouble(text) <= most) {
            return OptionalDouble.of(Double.parseDouble(text));
        }
        add(column, "must be minutes within 0 and %.0f, or \"%s\", was \"%s\"".formatted(most, NOT_SETTLED, text));
        return OptionalDouble.empty();
    }

    <E extends Enum<E> & Coded> Optional<E> word(CheckInColumn column, Class<E> type) {
        if (!has(column)) {
            return Optional.empty();
        }
        String text = cell(column).text();
        Optional<E> found = Coded.find(type, text);
        if (found.isEmpty()) {
            add(column, "must be one of %s, was \"%s\"".formatted(String.join(", ", Coded.keys(type)), text));
        }
        return found;
    }

    Optional<Boolean> yesNo(CheckInColumn column) {
        return switch (cell(column).text()) {
            case "" -> Optional.empty();
            case "yes" -> Optional.of(true);
            case "no" -> Optional.of(false);
            default -> {
                add(
                        column,
                        "must be yes or no, was \"%s\"".formatted(cell(column).text()));
                yield Optional.empty();
            }
        };
    }

    Optional<String> exercise(CheckInColumn column, Collection<String> known) {
        Optional<String> id = text(column);
        if (id.isPresent() && !known.contains(id.get())) {
            add(column, NearestWord.complaint("exercise of this plan", id.get(), known));
        }
        return id;
    }

    /** A time with its offset from UTC; without one it is taken as UTC. */
    Optional<OffsetDateTime> time(CheckInColumn column) {
        String text = required(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    hasOffset(text)
                            ? OffsetDateTime.parse(text)
                            : LocalDateTime.parse(text).atOffset(ZoneOffset.UTC));
        } catch (DateTimeParseException e) {
            add(column, "must be a time like 2026-03-02T07:30+01:00, was \"%s\"".formatted(text));
            return Optional.empty();
        }
    }

    static boolean hasOffset(String time) {
        return time.matches(".*T.*(Z|[+-][0-9]{2}.*)");
    }
}
