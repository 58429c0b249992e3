package slipway.care.record.access;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a token may be used for; what its account may do is a limit of its own. */
public enum ApiScope {
    CASES_READ,
    CASES_WRITE,
    /** Compute plans, and read the released one. */
    PLANS_READ,
    CHECK_INS_READ,
    CHECK_INS_WRITE,
    DOCUMENTS_READ,
    FHIR_READ;

    /** Its name outside the program, for example {@code check-ins-read}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The scope with this {@link #key()}. */
    public static Optional<ApiScope> find(String key) {
        return Arrays.stream(values()).filter(scope -> scope.key().equals(key)).findFirst();
    }
}
