package slipway.exercises.exercise;

import java.util.Arrays;
import java.util.Optional;

/** What speaks for an exercise in a person; the plan weighs it. */
public enum Indication {
    ROOT_SITE("root site", "a site at a lumbar or sacral root"),
    GLUTEAL_SITE("gluteal site", "a site in the buttock"),
    THIGH_SITE("thigh site", "a site behind the thigh"),
    FIBULAR_NECK_SITE("fibular neck site", "a site at the neck of the fibula"),
    TARSAL_TUNNEL_SITE("tarsal tunnel site", "a site behind the inner ankle or in the foot"),
    SURAL_SITE("sural site", "a site of the sural nerve"),
    FRONT_THIGH_SITE("front thigh site", "a site of the femoral or saphenous nerve"),
    HIGH_IRRITABILITY("high irritability", "symptoms start easily and settle slowly"),
    LOW_IRRITABILITY("low irritability", "symptoms start only at the end of a movement and settle at once"),
    EXTENSION_PREFERENCE("extension preference", "repeated bending backwards eases or centralises the symptoms"),
    FLEXION_PREFERENCE("flexion preference", "repeated bending forwards eases or centralises the symptoms"),
    SIDE_PREFERENCE("side preference", "repeated side gliding eases or centralises the symptoms"),
    HIP_ABDUCTOR_WEAKNESS("hip abductor weakness", "weak hip abduction"),
    HIP_EXTENSOR_WEAKNESS("hip extensor weakness", "weak hip extension"),
    KNEE_EXTENSOR_WEAKNESS("knee extensor weakness", "weak knee extension"),
    ANKLE_DORSIFLEXOR_WEAKNESS("ankle dorsiflexor weakness", "weak lifting of the foot"),
    CALF_WEAKNESS("calf weakness", "weak heel raise"),
    TRUNK_WEAKNESS("trunk weakness", "poor control or endurance of the trunk"),
    TIGHT_CALF("tight calf", "short calf muscles"),
    TIGHT_HAMSTRING("tight hamstring", "short hamstring muscles without nerve signs"),
    TIGHT_HIP_FLEXOR("tight hip flexor", "short muscles at the front of the hip"),
    LOW_ACTIVITY("low activity", "little walking or exercise in the day");

    private final String key;
    private final String words;

    Indication(String key, String words) {
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

    /** The indication with this name in files. */
    public static Optional<Indication> find(String key) {
        return Arrays.stream(values()).filter(value -> value.key.equals(key)).findFirst();
    }
}
