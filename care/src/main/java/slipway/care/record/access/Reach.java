package slipway.care.record.access;

/** How far an account sees. */
public enum Reach {
    /** Episodes of which it is the therapist. */
    OWN,
    /** Also those of the members of its teams. */
    TEAM,
    /** All of its clinic. */
    CLINIC
}
