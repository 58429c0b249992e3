package slipway.reasoning.response.checkin;

/** How the next morning was against a usual one. */
public enum Morning implements Coded {
    BETTER,
    SAME,
    WORSE
}
