package slipway.reasoning.tolerance;

/** What a movement far from the symptom did to it while the limb was held. */
public enum RemoteChange {
    CHANGED,
    UNCHANGED,
    NOT_TESTED
}
