package slipway.mechanics.nerve;

import java.util.Arrays;
import java.util.Optional;

/** A modelled nerve pathway from the brainstem to the tip. */
public enum Tract {
    /** Through the sciatic and tibial nerve to the plantar ends. */
    SCIATIC_TIBIAL("sciatic-tibial", Pathway.BACK),
    /** Through the sciatic, common and deep fibular nerve to the toes. */
    SCIATIC_FIBULAR("sciatic-fibular", Pathway.BACK),
    /** Through the sciatic, common and superficial fibular nerve to the back of the foot. */
    SCIATIC_SUPERFICIAL_FIBULAR("sciatic-superficial-fibular", Pathway.BACK),
    /** Through the sciatic, tibial and sural nerve to the outer foot. */
    SCIATIC_SURAL("sciatic-sural", Pathway.BACK),
    /** Through the femoral and the saphenous nerve to the inner ankle; not validated. */
    FEMORAL_SAPHENOUS("femoral-saphenous", Pathway.FRONT),
    /** Through the femoral nerve to the muscle at the front of the thigh; not validated. */
    FEMORAL_QUADRICEPS("femoral-quadriceps", Pathway.FRONT);

    private final String key;
    private final Pathway pathway;

    Tract(String key, Pathway pathway) {
        this.key = key;
        this.pathway = pathway;
    }

    /** The system of nerves that it belongs to. */
    public Pathway pathway() {
        return pathway;
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
