package slipway.reasoning.response.checkin;

/** How far down the limb symptoms reach now, from none to the furthest. */
public enum Reach implements Coded {
    NONE,
    BACK,
    BUTTOCK,
    THIGH,
    KNEE,
    CALF,
    FOOT,
    TOES
}
