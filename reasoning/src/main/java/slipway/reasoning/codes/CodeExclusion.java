package slipway.reasoning.codes;

/**
 * Codes that exclude each other, told by how the codes begin.
 *
 * @param family the beginning of the codes on one side, for example {@code G57.0}
 * @param other the beginning of the codes on the other side
 * @param kind 1 if the two may not stand together for the same condition, 2 if both may stand together
 */
public record CodeExclusion(String family, String other, int kind, String source) {
    public CodeExclusion {
        if (family.isEmpty() || other.isEmpty()) {
            throw new IllegalArgumentException("an exclusion needs the beginnings of two codes");
        }
        if (kind != 1 && kind != 2) {
            throw new IllegalArgumentException("the kind of an exclusion must be 1 or 2, was " + kind);
        }
    }

    boolean meets(String a, String b) {
        return (a.startsWith(family) && b.startsWith(other)) || (b.startsWith(family) && a.startsWith(other));
    }

    /** Whether it is about the same two families, in either order. */
    public boolean isAboutSame(CodeExclusion that) {
        return (family.equals(that.family) && other.equals(that.other))
                || (family.equals(that.other) && other.equals(that.family));
    }
}
