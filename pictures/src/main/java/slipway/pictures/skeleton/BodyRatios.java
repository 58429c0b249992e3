package slipway.pictures.skeleton;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Lengths of the body as fractions of stature ({@code segment-ratios.csv}). */
public final class BodyRatios {
    private static final Map<String, Double> ALL = load();
    static final double THIGH = get("thigh");
    static final double SHANK = get("shank");
    static final double FOOT = get("foot length");
    static final double ANKLE_HEIGHT = get("ankle height");
    static final double HEEL_BACK = get("heel behind ankle");
    static final double TOES = get("toe length");
    static final double FOOT_BREADTH = get("foot breadth");
    static final double UPPER_ARM = get("upper arm");
    static final double FOREARM = get("forearm");
    static final double HAND = get("hand");
    static final double HALF_HIPS = get("half hip joint spacing");
    static final double HALF_SHOULDERS = get("half shoulder joint spacing");
    static final double TRUNK = get("neck base height") - get("hip height");
    static final double SHOULDER_ALONG = get("shoulder height") - get("hip height");
    static final double HEAD_UP = get("head centre height") - get("neck base height");
    static final double HEAD_FORWARD = get("head forward");

    private BodyRatios() {}

    /**
     * A length as a fraction of stature.
     *
     * @param measure as in the file, for example {@code thigh}
     * @throws IllegalArgumentException if the file has no such measure
     */
    public static double get(String measure) {
        Double ratio = ALL.get(measure);
        if (ratio == null) {
            throw new IllegalArgumentException(
                    "unknown body measure \"%s\" (known: %s)".formatted(measure, String.join(", ", ALL.keySet())));
        }
        return ratio;
    }

    /**
     * A length of a person in cm.
     *
     * @param statureCm height of the person, 50 to 250 cm
     */
    public static double lengthCm(String measure, double statureCm) {
        if (!(statureCm >= 50 && statureCm <= 250)) {
            throw new IllegalArgumentException("stature must be within 50 and 250 cm, was " + statureCm + " cm");
        }
        return get(measure) * statureCm;
    }

    private static Map<String, Double> load() {
        var all = new LinkedHashMap<String, Double>();
        for (var row : Table.read("segment-ratios.csv")) {
            all.put(row.get("measure"), Double.valueOf(row.get("ratio")));
        }
        return Collections.unmodifiableMap(all);
    }
}
