package slipway.exercises.exercise;

import java.util.Arrays;
import java.util.Optional;

/** What speaks against an exercise in a person. The list of a file is not complete: the therapist decides. */
public enum Exclusion {
    HIGH_IRRITABILITY("high irritability", "symptoms start easily and settle slowly"),
    NECK_NOT_SCREENED("neck not screened", "the neck was not screened or has signs of its own"),
    CROSSED_RAISE_POSITIVE("crossed raise positive", "raising the other leg brings on the symptoms"),
    HIP_REPLACEMENT("hip replacement", "a replaced hip whose limits of movement are not known"),
    KNEE_CANNOT_KNEEL("cannot kneel", "kneeling hurts or is not allowed"),
    LATE_PREGNANCY("late pregnancy", "pregnancy after the fourth month"),
    POOR_BALANCE("poor balance", "balance or leg strength is not enough to stand alone"),
    BRITTLE_BONES("brittle bones", "osteoporosis or a past vertebral fracture"),
    RECENT_BACK_SURGERY("recent back surgery", "an operation on the back that has not been cleared for this"),
    EXTENSION_WORSENS("extension worsens", "bending backwards worsens or sends symptoms further down"),
    FLEXION_WORSENS("flexion worsens", "bending forwards worsens or sends symptoms further down"),
    GLUTEAL_PRESSURE("gluteal pressure", "pressing on or winding up the buttock brings on the symptoms"),
    WRIST_PAIN("wrist pain", "weight on the hands hurts"),
    SHOULDER_PAIN("shoulder pain", "weight on the arms or reaching hurts"),
    WEAK_FOOT("weak foot", "foot drop or a weak calf that makes standing on one leg unsafe");

    private final String key;
    private final String words;

    Exclusion(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    /** In words, for the therapist. */
    public String words() {
        return words;
    }

    /** The exclusion with this name in files. */
    public static Optional<Exclusion> find(String key) {
        return Arrays.stream(values()).filter(value -> value.key.equals(key)).findFirst();
    }
}
