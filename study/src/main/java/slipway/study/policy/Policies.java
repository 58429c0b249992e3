package slipway.study.policy;

import java.util.List;

/** All ways of dosing that are compared. */
public final class Policies {
    /** The way that the others are compared with. */
    public static final String MAIN_COMPARATOR = "visits";

    private static final List<Policy> ALL = List.of(new ChangeAtVisits(), new FixedSchedule(), new NoExercise());

    private Policies() {}

    /** All, the main comparator first. */
    public static List<Policy> list() {
        return ALL;
    }
}
