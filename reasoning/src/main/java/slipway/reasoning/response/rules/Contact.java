package slipway.reasoning.response.rules;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.Locale;

/** Who has to speak with whom, most urgent last. */
public enum Contact {
    NONE,
    /** The therapist is asked to decide; the person need do nothing. */
    ASK_THERAPIST,
    /** The person calls the clinic in the next days. */
    CALL,
    /** The person speaks with the clinic today. */
    SAME_DAY,
    /** The local emergency number. */
    EMERGENCY_NUMBER;

    /** The name in files. */
    @JsonValue
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The more urgent of the two. */
    public Contact orMoreUrgent(Contact other) {
        return compareTo(other) >= 0 ? this : other;
    }

    static Contact of(String key) {
        return Arrays.stream(values())
                .filter(value -> value.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("unknown contact \"" + key + "\""));
    }
}
