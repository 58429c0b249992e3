package slipway.study.person;

/** What must never go unanswered. */
public enum Event {
    /** A sign of danger: the emergency department, now. */
    EMERGENCY,
    /** New weakness. */
    WEAKNESS,
    /** New numbness that stays. */
    NUMBNESS
}
