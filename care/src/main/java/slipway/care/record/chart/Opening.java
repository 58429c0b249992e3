package slipway.care.record.chart;

import java.util.Optional;

/** What came of asking for a chart. */
public sealed interface Opening {
    /** It is open. */
    record Opened(Chart chart) implements Opening {}

    /**
     * It stays closed.
     *
     * @param reason why; an answer to a stranger should not tell the two apart
     */
    record Refused(Reason reason) implements Opening {}

    /** Why a chart stays closed. */
    enum Reason {
        /** There is no such episode. */
        UNKNOWN,
        /** The user's reach does not go so far; breaking the glass may help. */
        OUT_OF_REACH,
        /** The role reads no charts. */
        ROLE
    }

    /** The chart, if it is open. */
    default Optional<Chart> chartIfOpen() {
        return this instanceof Opened opened ? Optional.of(opened.chart()) : Optional.empty();
    }
}
