package slipway.care.record.remind;

/** How it stands with the reminder of one person and day. */
public enum MailDay {
    /** Somebody is at it, or it failed and is tried again. */
    TRYING,
    SENT,
    /** It failed too often; that day gets none. */
    GIVEN_UP,
    /** The person needed none: had reported, has nothing at home, or everything rests. */
    NOT_NEEDED
}
