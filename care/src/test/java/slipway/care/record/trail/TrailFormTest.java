package slipway.care.record.trail;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class TrailFormTest {
    /** The digest of this entry was computed the stated form written out in Python, then its hashlib. */
    @Test
    void digestIsThatOfTheStatedForm() {
        assertThat(TrailForm.digest(entry("a", "b")))
                .isEqualTo("ab5fef6e1ffe793089aedea2519b77e3996f7e1883a28488f767115e1b75f73e");
    }

    @Test
    void fieldsCannotRunIntoEachOther() {
        assertThat(TrailForm.digest(entry("ab", "c"))).isNotEqualTo(TrailForm.digest(entry("a", "bc")));
    }

    @Test
    void emptyTextHasTheKnownDigest() {
        // FIPS 180-4 test vector of the empty message.
        assertThat(TrailForm.NO_PAYLOAD).isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    private static TrailEntry entry(String entity, String entityId) {
        return new TrailEntry(
                Chain.ofPerson("p"),
                1,
                Instant.parse("2026-03-02T10:15:30.123456Z"),
                "José",
                "THERAPIST",
                Action.CHANGE,
                entity,
                entityId,
                2,
                TrailForm.NO_PAYLOAD,
                TrailForm.START,
                "");
    }
}
