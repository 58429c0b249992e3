package slipway.reasoning.response.checkin;

/** The answer to the emergency questions. */
public enum EmergencyAnswer implements Coded {
    NO,
    YES,
    /** Yes was tapped, then "by mistake": it is looked into all the same. */
    MISTAKE;

    /** The answer that asks for more care. */
    EmergencyAnswer orMore(EmergencyAnswer other) {
        if (this == YES || other == YES) {
            return YES;
        }
        return this == MISTAKE || other == MISTAKE ? MISTAKE : NO;
    }
}
