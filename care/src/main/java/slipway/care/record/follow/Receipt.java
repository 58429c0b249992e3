package slipway.care.record.follow;

/** What came of sending a check-in. */
public sealed interface Receipt {
    /** Kept. */
    record Taken(CheckIn checkIn) implements Receipt {}

    /** It had been sent before with the same content; the first one is kept and nothing was added. */
    record Again(CheckIn checkIn) implements Receipt {}

    /** The id has been used for something else; nothing was added. */
    record IdInUse(String id) implements Receipt {}
}
