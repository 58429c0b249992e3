package slipway.care.record;

import java.util.EnumSet;

/** In which role somebody acts. */
public enum Role {
    THERAPIST,
    ASSISTANT,
    LEAD,
    /** Reads the trail and nothing else. */
    AUDITOR,
    /** Through an access link, without an account. */
    PATIENT,
    /** The command line on the machine itself, and what runs by the clock. */
    PROGRAM;

    private static final EnumSet<Role> STAFF = EnumSet.of(THERAPIST, ASSISTANT, LEAD, AUDITOR);

    /** Whether an account can have this role. */
    public boolean isStaff() {
        return STAFF.contains(this);
    }

    /** Whether an act in this role sees everybody of its clinic, whatever the reach of its account. */
    public boolean seesClinic() {
        return this == LEAD || this == PROGRAM;
    }
}
