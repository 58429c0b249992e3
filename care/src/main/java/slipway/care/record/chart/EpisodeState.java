package slipway.care.record.chart;

/** Where an episode stands. */
public enum EpisodeState {
    OPEN,
    /** Waits for somebody else, for example after a referral. */
    ON_HOLD,
    CLOSED
}
