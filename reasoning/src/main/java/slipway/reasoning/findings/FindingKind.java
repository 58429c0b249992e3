package slipway.reasoning.findings;

import java.util.Arrays;
import java.util.Optional;

/** What kind of examination item a finding comes from. */
public enum FindingKind {
    STRENGTH("strength", "strength"),
    REFLEX("reflex", "reflexes"),
    SENSATION("sensation", "sensation"),
    PROVOCATION("provocation", "provocation"),
    SYMPTOM("symptom", "symptoms");

    private final String key;
    private final String block;

    FindingKind(String key, String block) {
        this.key = key;
        this.block = block;
    }

    /** The name in data files, for example {@code reflex}. */
    public String key() {
        return key;
    }

    /** The name of its block in a case file, for example {@code reflexes}. */
    public String block() {
        return block;
    }

    /** The kind with this name in data files. */
    public static Optional<FindingKind> find(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key.equals(key)).findFirst();
    }

    /** The kind whose block in a case file has this name. */
    public static Optional<FindingKind> findByBlock(String block) {
        return Arrays.stream(values()).filter(kind -> kind.block.equals(block)).findFirst();
    }
}
