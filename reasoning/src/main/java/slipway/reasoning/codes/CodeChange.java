package slipway.reasoning.codes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;

/**
 * What a list of codes would change of what is in use.
 *
 * @param line as it would be; as it was if it is taken out
 * @param before the line in use for the same code and first day
 */
public record CodeChange(Kind kind, CodeEntry line, Optional<CodeEntry> before) {
    /** What becomes of a line. */
    public enum Kind {
        /** Was not known. */
        NEW,
        /** Says something else. */
        CHANGED,
        /** Holds no longer than a day that was not told before, or than an earlier one. */
        ENDED,
        /** Was in the clinic's list and is no longer; what ships with the program speaks for the code again. */
        TAKEN_OUT
    }

    private record Key(String code, String from) {
        static Key of(CodeEntry entry) {
            return new Key(entry.code(), entry.validFrom().toString());
        }
    }

    /**
     * The changes, in the order of the codes; what was taken out comes last.
     *
     * @param now the list of the clinic up to now
     * @param next the list that would take its place as a whole
     */
    public static List<CodeChange> between(CodeSet now, CodeSet next) {
        Map<Key, CodeEntry> inUse = DiagnosisCodes.of(now).lines().stream().collect(by());
        Map<Key, CodeEntry> then = next.entries().stream().collect(by());
        var changes = new ArrayList<CodeChange>();
        for (CodeEntry line : next.entries()) {
            Optional<CodeEntry> before = Optional.ofNullable(inUse.get(Key.of(line)));
            if (before.isEmpty()) {
                changes.add(new CodeChange(Kind.NEW, line, before));
            } else if (!line.saysSameAs(before.get())) {
                changes.add(new CodeChange(line.endsBefore(before.get()) ? Kind.ENDED : Kind.CHANGED, line, before));
            }
        }
        now.entries().stream()
                .filter(line -> !then.containsKey(Key.of(line)))
                .forEach(line -> changes.add(new CodeChange(Kind.TAKEN_OUT, line, Optional.of(line))));
        return List.copyOf(changes);
    }

    private static Collector<CodeEntry, ?, Map<Key, CodeEntry>> by() {
        return Collectors.toMap(Key::of, Function.identity());
    }
}
