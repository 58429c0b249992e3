package slipway.mechanics.nerve;

import java.util.Arrays;
import java.util.Optional;

/** A modelled nerve pathway from the brainstem to the tip. */
public enum Tract {
    /** Through the sciatic and tibial nerve to the plantar ends. */
    SCIATIC_TIBIAL("sciatic-tibial"),
    /** Through the sciatic, common and deep fibular nerve to the toes. */
    SCIATIC_FIBULAR("sciatic-fibular"),
    /** Through the sciatic, common and superficial fibular nerve to the back of the foot. */
    SCIATIC_SUPERFICIAL_FIBULAR("sciatic-superficial-fibular"),
    /** Through the sciatic, tibial and sural nerve to the outer foot. */
    SCIATIC_SURAL("sciatic-sural");

    private final String key;

    Tract(String key) {
        this.key = key;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    /** The tract with this name in files. */
    public static Optional<Tract> find(String key) {
        return Arrays.stream(values()).filter(tract -> tract.key.equals(key)).findFirst();
    }
}
