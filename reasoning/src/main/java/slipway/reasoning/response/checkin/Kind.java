package slipway.reasoning.response.checkin;

/** What was felt most during the session. */
public enum Kind implements Coded {
    NONE,
    STRETCH,
    TINGLING,
    NUMBNESS,
    PAIN
}
