package slipway.study.policy;

/** A way of dosing. Without state; its courses have it. */
public interface Policy {
    /** Stable name, for example {@code visits}. */
    String id();

    /** What it does, one sentence for the report. */
    String words();

    /** Whether reports are read on the day they are sent; else at the next visit. */
    boolean readsDaily();

    /** Begins with a person; the first visit follows at once, with the room. */
    Course admit(Intake intake);
}
