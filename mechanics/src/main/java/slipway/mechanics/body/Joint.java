package slipway.mechanics.body;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.evidence.BundledTable;

/**
 * A degree of freedom of a posture. Angles are clinical degrees, 0 in the anatomical position (standing straight, foot
 * at a right angle to the shin); the positive direction and the accepted range come from {@code joints.csv}.
 */
public enum Joint {
    HIP("hip", true),
    HIP_ABDUCTION("hip-abduction", true),
    HIP_ROTATION("hip-rotation", true),
    KNEE("knee", true),
    ANKLE("ankle", true),
    ANKLE_INVERSION("ankle-inversion", true),
    TOES("toes", true),
    SPINE("spine", false),
    SPINE_SIDE("spine-side", false),
    NECK("neck", false),
    SHOULDER_ABDUCTION("shoulder-abduction", true),
    ELBOW("elbow", true),
    WRIST("wrist", true),
    WRIST_DEVIATION("wrist-deviation", true);

    private static final int SHOWN_DECIMALS = 6;

    private final String key;
    private final boolean paired;

    Joint(String key, boolean paired) {
        this.key = key;
        this.paired = paired;
    }

    /** The name used in files, for example {@code hip-abduction}. */
    public String key() {
        return key;
    }

    /** Whether there is one on each side of the body. */
    public boolean paired() {
        return paired;
    }

    /** The movement that counts positive, in words, for example {@code dorsiflexion}. */
    public String positiveMovement() {
        return Limits.ROWS[ordinal()].positive;
    }

    /** Smallest accepted angle in degrees. */
    public double lowDeg() {
        return Limits.ROWS[ordinal()].lowDeg;
    }

    /** Largest accepted angle in degrees. */
    public double highDeg() {
        return Limits.ROWS[ordinal()].highDeg;
    }

    /** The joint with this name in files. */
    public static Optional<Joint> find(String key) {
        return Arrays.stream(values()).filter(joint -> joint.key.equals(key)).findFirst();
    }

    /**
     * The angle itself if it is a number within the accepted range.
     *
     * @throws IllegalArgumentException naming the joint, the range and the value (also for NaN)
     */
    public double checked(double angleDeg) {
        if (!(angleDeg >= lowDeg() && angleDeg <= highDeg())) {
            throw new IllegalArgumentException("%s must be within %s and %s deg, was %s"
                    .formatted(key, trimmed(lowDeg()), trimmed(highDeg()), trimmed(angleDeg)));
        }
        return angleDeg;
    }

    /** A number as people write it: 40 rather than 40.0, and no more decimals than an angle has. */
    static String trimmed(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(SHOWN_DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private record Limits(String positive, double lowDeg, double highDeg) {
        static final Limits[] ROWS = load();

        private static Limits[] load() {
            var rows = new Limits[values().length];
            for (CSVRecord row : BundledTable.read("joints.csv")) {
                Joint joint = find(row.get("joint"))
                        .orElseThrow(() -> new IllegalStateException("joints.csv: unknown joint " + row.get("joint")));
                rows[joint.ordinal()] = new Limits(
                        row.get("positive"),
                        Double.parseDouble(row.get("lowDeg")),
                        Double.parseDouble(row.get("highDeg")));
            }
            for (Joint joint : values()) {
                if (rows[joint.ordinal()] == null) {
                    throw new IllegalStateException("joints.csv: no row for " + joint.key);
                }
            }
            return rows;
        }
    }
}
