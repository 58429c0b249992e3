package slipway.documents.paper;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The papers. */
public enum PaperKind {
    EVALUATION,
    PLAN_OF_CARE,
    VISIT_NOTE,
    PROGRESS_REPORT,
    /** To somebody who has to look at once, after a screening that found something. */
    REFERRAL,
    /** To whoever sent the person. */
    LETTER,
    DISCHARGE,
    /** For the person: what to do if it comes back. */
    RELAPSE_PLAN;

    /** Its name in files, in the record and on the command line, for example {@code visit-note}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The paper of this name. */
    public static Optional<PaperKind> find(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key().equals(key)).findFirst();
    }

    /** Whether the person gets to read it; then it must be easy to read, in the person's language. */
    public boolean forThePerson() {
        return this == RELAPSE_PLAN;
    }
}
