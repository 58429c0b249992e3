package slipway.web.security;

/** Names of what a session has been granted, beside the roles. */
final class Authorities {
    /** Password given, second factor still to come: opens nothing but the page that asks for it. */
    static final String PENDING = "pending";

    /** Signed in with every factor. */
    static final String STAFF = "staff";

    /** Holder of a patient's link. */
    static final String PATIENT = "patient";

    private Authorities() {}
}
