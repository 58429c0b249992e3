package slipway.mechanics.parameters;

import java.util.Arrays;
import java.util.Optional;

/** The parameters of the nerve model; medians, spreads and sources are in {@code priors.csv}. */
public enum ModelParameter {
    HIP_ARM("hip-arm"),
    KNEE_ARM("knee-arm"),
    ANKLE_ARM("ankle-arm"),
    SPINE_ARM("spine-arm"),
    NECK_ARM("neck-arm"),
    FIBULAR_KNEE_RATIO("fibular-knee-ratio"),
    SURAL_ANKLE_RATIO("sural-ankle-ratio"),
    FIBULAR_ANKLE_RATIO("fibular-ankle-ratio"),
    COUPLING_CORD("coupling-cord"),
    COUPLING_CANAL("coupling-canal"),
    COUPLING_PELVIS("coupling-pelvis"),
    COUPLING_THIGH("coupling-thigh"),
    COUPLING_SHANK("coupling-shank"),
    COUPLING_FOOT("coupling-foot"),
    CORD_STIFFNESS("cord-stiffness"),
    CORD_SPRING("cord-spring"),
    END_SPRING("end-spring"),
    TOE_MIDPOINT("toe-midpoint"),
    TOE_WIDTH("toe-width"),
    SLACK_SLOPE("slack-slope"),
    TAPER("taper"),
    ROOT_STIFFNESS("root-stiffness"),
    HIP_ZONE("hip-zone"),
    KNEE_ZONE("knee-zone"),
    ANKLE_ZONE("ankle-zone"),
    NOTCH_TETHER("notch-tether");

    private final String key;

    ModelParameter(String key) {
        this.key = key;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    /** The parameter with this name in files. */
    public static Optional<ModelParameter> find(String key) {
        return Arrays.stream(values()).filter(p -> p.key.equals(key)).findFirst();
    }
}
