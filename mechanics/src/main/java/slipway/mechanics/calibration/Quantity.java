package slipway.mechanics.calibration;

import java.util.Arrays;
import java.util.Optional;

/** What a row of published measurements is about; other quantities in the evidence are context and not predicted. */
public enum Quantity {
    /** Slide against the bed from one posture to the other, mm, distal positive. */
    EXCURSION("excursion", "mm"),
    /** Change of strain from one posture to the other, percentage points. */
    STRAIN("strain", "%"),
    /** Strain in the second posture, %. */
    END_STRAIN("end-strain", "%"),
    /** Change of the length of the bed of the whole tract, mm. */
    BED_ELONGATION("bed-elongation", "mm"),
    /** Share of draws in which a relation between other rows holds. */
    ORDER("order", "");

    private final String key;
    private final String unit;

    Quantity(String key, String unit) {
        this.key = key;
        this.unit = unit;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    /** The unit of its values. */
    public String unit() {
        return unit;
    }

    /** The quantity with this name in files. */
    public static Optional<Quantity> find(String key) {
        return Arrays.stream(values()).filter(q -> q.key.equals(key)).findFirst();
    }
}
