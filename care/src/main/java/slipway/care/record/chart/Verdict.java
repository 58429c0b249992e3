package slipway.care.record.chart;

/** What somebody made of a proposal. */
public enum Verdict {
    ACCEPT,
    CHANGE,
    REFUSE
}
