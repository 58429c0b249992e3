package slipway.reasoning.response.rules;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.Locale;

/**
 * What to do next with an exercise. Of several the first in this order wins: the most careful one, and a step up over merely
 * going on, because its rule asks for everything that a good session needs and more.
 */
public enum Decision {
    /** Stop everything; emergency department or emergency number now. */
    EMERGENCY,
    /** Stop everything; speak with the clinic today. */
    CONTACT_SAME_DAY,
    /** Stopped by an earlier report and not yet released by the clinician. */
    STAY_STOPPED,
    /** Rest this exercise until the therapist has looked at it. */
    REST_AND_REVIEW,
    /** Wait until back to usual, then go on with less range and slower. */
    PAUSE,
    /** Do less: one or more rungs down. */
    EASE,
    /** The same dose; something speaks against more. */
    HOLD,
    /** One rung up. */
    STEP_UP,
    /** A good session: the same again. */
    GO_ON;

    /** The name in files, for example {@code step-up}. */
    @JsonValue
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether nothing is to be done of the exercise after this. */
    public boolean stops() {
        return compareTo(REST_AND_REVIEW) <= 0;
    }

    /** Whether the dose falls or stops. */
    public boolean eases() {
        return compareTo(EASE) <= 0;
    }

    static Decision of(String key) {
        return Arrays.stream(values())
                .filter(value -> value.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("unknown decision \"" + key + "\""));
    }
}
