package slipway.care.record.trail;

import java.util.Locale;

/**
 * Whose trail: that of a person, or of a clinic for what concerns no person (sign-ins, accounts, settings).
 *
 * @param id of the person or clinic
 */
public record Chain(Kind kind, String id) {
    /** What the chain is of. */
    public enum Kind {
        PERSON,
        CLINIC
    }

    public static Chain ofPerson(String personId) {
        return new Chain(Kind.PERSON, personId);
    }

    public static Chain ofClinic(String clinicId) {
        return new Chain(Kind.CLINIC, clinicId);
    }

    /** For example {@code person 0192...}. */
    @Override
    public String toString() {
        return kind.name().toLowerCase(Locale.ROOT) + " " + id;
    }
}
