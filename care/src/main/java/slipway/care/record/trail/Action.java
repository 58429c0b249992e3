package slipway.care.record.trail;

/** What was done. */
public enum Action {
    CREATE,
    READ,
    CHANGE,
    SIGN,
    RELEASE,
    EXPORT,
    IMPORT,
    PRINT,
    ERASE,
    SIGN_IN,
    SIGN_OUT,
    SIGN_IN_FAILED,
    LINK_USED,
    LINK_FAILED,
    LINK_REVOKED,
    BREAK_GLASS
}
