package slipway.web.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of a field as a path: {@code tests[0].onsetDeg}.
 *
 * @param steps keys, and entries of lists by number
 */
record FieldPath(List<Step> steps) {
    /** Deeper and longer than any form of ours. */
    private static final int DEEPEST = 8;

    private static final int LONGEST_LIST = 100;
    private static final Pattern STEP = Pattern.compile("([A-Za-z][A-Za-z0-9_-]*)((?:\\[\\d{1,3}])*)");
    private static final Pattern INDEX = Pattern.compile("\\[(\\d+)]");

    FieldPath {
        steps = List.copyOf(steps);
    }

    /** One step down. */
    sealed interface Step permits Key, Entry {}

    /** To the value of a key. */
    record Key(String name) implements Step {}

    /** To an entry of a list. */
    record Entry(int index) implements Step {}

    /** The path that a name means; empty if it is not one. */
    static Optional<FieldPath> parse(String name) {
        var steps = new ArrayList<Step>();
        for (String part : name.split("\\.", -1)) {
            Matcher step = STEP.matcher(part);
            if (!step.matches()) {
                return Optional.empty();
            }
            steps.add(new Key(step.group(1)));
            Matcher index = INDEX.matcher(step.group(2));
            while (index.find()) {
                int at = Integer.parseInt(index.group(1));
                if (at >= LONGEST_LIST) {
                    return Optional.empty();
                }
                steps.add(new Entry(at));
            }
        }
        return steps.size() > DEEPEST ? Optional.empty() : Optional.of(new FieldPath(steps));
    }
}
