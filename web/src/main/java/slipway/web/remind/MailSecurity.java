package slipway.web.remind;

/** How the way to the mail server is kept from listeners. */
public enum MailSecurity {
    /** Begins in plain and must turn to TLS before anything is said; without it nothing is sent. */
    STARTTLS,
    /** TLS from the first byte. */
    TLS,
    /** In plain; only to a mail server on this machine. */
    NONE
}
