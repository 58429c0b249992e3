package slipway.care.record.remind;

/** Why a reminder could not be sent: kinds only, since the words of a mail server repeat addresses. */
public enum MailFault {
    /** Nobody answers there, or too slowly. */
    NO_CONNECTION,
    /** It speaks, but not so that nobody can listen. */
    NOT_ENCRYPTED,
    /** User or password is wrong. */
    SIGN_IN_REFUSED,
    /** It does not take mail for this person's address. */
    ADDRESS_REFUSED,
    /** Anything else that it said. */
    REFUSED
}
