package slipway.care.record.chart;

/** What was computed. */
public enum ResultKind {
    SCREENING,
    SITES,
    TOLERANCE
}
