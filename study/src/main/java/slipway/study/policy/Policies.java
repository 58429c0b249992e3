package slipway.study.policy;

import java.util.List;
import java.util.stream.Stream;

/** All ways of dosing that are compared. */
public final class Policies {
    /** The way that the others are compared with. */
    public static final String MAIN_COMPARATOR = "visits";

    private static final List<Policy> ALL = Stream.of(
                    Stream.of(new ChangeAtVisits()),
                    ByResponse.all().stream(),
                    Stream.of(new FixedSchedule(), new NoExercise()))
            .<Policy>flatMap(ways -> ways)
            .toList();

    private Policies() {}

    /** All, the main comparator first. */
    public static List<Policy> list() {
        return ALL;
    }
}
