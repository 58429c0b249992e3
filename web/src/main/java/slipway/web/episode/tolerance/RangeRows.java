package slipway.web.episode.tolerance;

import java.util.List;

/** The movements whose range is asked for, as the case file names them. */
public final class RangeRows {
    private static final List<String> LEGS = List.of(
            "hip.flexion",
            "hip.extension",
            "hip.abduction",
            "hip.adduction",
            "hip.internalRotation",
            "hip.externalRotation",
            "knee.flexion",
            "knee.extension",
            "ankle.dorsiflexion",
            "ankle.plantarflexion",
            "ankle.inversion",
            "ankle.eversion");

    private static final List<String> TRUNK =
            List.of("neck.flexion", "neck.extension", "spine.flexion", "spine.extension");

    private RangeRows() {}

    static List<String> legs() {
        return LEGS;
    }

    static List<String> trunk() {
        return TRUNK;
    }
}
