package slipway.care.record.person;

import java.time.Instant;

/**
 * A person as kept.
 *
 * @param version 1, 2, ...
 * @param createdAt when the record was made
 */
public record Person(String id, String clinicId, long version, PersonDetails details, Instant createdAt) {
    /** Names the record, never the person: this may end in a log. */
    @Override
    public String toString() {
        return "person " + id + " version " + version;
    }
}
