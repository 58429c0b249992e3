package slipway.mechanics.body;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Joint angles of the whole body, seen from the side of one nerve: own limb and other limb, spine and neck. Immutable;
 * every angle is within the range of {@code joints.csv}. Joints that are not named are 0.
 *
 * <p>As text: pairs of joint and angle in degrees, separated by spaces; {@code other-} before the joint means the limb
 * of the other side: {@code hip 60 knee 0 ankle 10 other-hip 30}.
 */
public final class Posture {
    private static final String OTHER_PREFIX = "other-";
    private static final int JOINTS = Joint.values().length;
    private static final Posture REFERENCE = new Posture(new double[2 * JOINTS]);

    private final double[] anglesDeg;

    private Posture(double[] anglesDeg) {
        this.anglesDeg = anglesDeg;
    }

    /** All joints at 0: lying straight. Strain and glide are counted from here. */
    public static Posture reference() {
        return REFERENCE;
    }

    /**
     * Reads the text form. All mistakes are reported at once.
     *
     * @throws IllegalArgumentException naming every unknown joint, missing or unreadable angle, repeated joint and
     *     angle out of range
     */
    public static Posture parse(String text) {
        return REFERENCE.withParsed(text);
    }

    /** This posture with the joints named in the text changed; the same rules and errors as {@link #parse}. */
    public Posture withParsed(String text) {
        String[] words = text.isBlank() ? new String[0] : text.strip().split("\\s+");
        var mistakes = new ArrayList<String>();
        double[] angles = anglesDeg.clone();
        var seen = new boolean[2 * JOINTS];
        for (int i = 0; i < words.length; i += 2) {
            readPair(words, i, angles, seen, mistakes);
        }
        if (!mistakes.isEmpty()) {
            throw new IllegalArgumentException(
                    "posture \"%s\": %s".formatted(text.strip(), String.join("; ", mistakes)));
        }
        return new Posture(angles);
    }

    private static void readPair(String[] words, int at, double[] angles, boolean[] seen, List<String> mistakes) {
        String word = words[at].toLowerCase(Locale.ROOT);
        Limb limb = word.startsWith(OTHER_PREFIX) ? Limb.OTHER : Limb.OWN;
        String key = limb == Limb.OTHER ? word.substring(OTHER_PREFIX.length()) : word;
        Joint joint = Joint.find(key).orElse(null);
        if (joint == null) {
            mistakes.add("unknown joint \"%s\" (known: %s)".formatted(words[at], knownJoints()));
            return;
        }
        if (limb == Limb.OTHER && !joint.paired()) {
            mistakes.add(joint.key() + " has no other side");
            return;
        }
        if (at + 1 >= words.length) {
            mistakes.add(word + " lacks its angle in degrees");
            return;
        }
        int slot = slot(joint, limb);
        if (seen[slot]) {
            mistakes.add(word + " is given twice");
        }
        seen[slot] = true;
        try {
            angles[slot] = joint.checked(Double.parseDouble(words[at + 1]));
        } catch (NumberFormatException e) {
            mistakes.add("%s needs an angle in degrees, was \"%s\"".formatted(word, words[at + 1]));
        } catch (IllegalArgumentException e) {
            mistakes.add(String.valueOf(e.getMessage()));
        }
    }

    private static String knownJoints() {
        return String.join(", ", Arrays.stream(Joint.values()).map(Joint::key).toList());
    }

    /** The angle of a joint in degrees; for a joint without sides the limb does not matter. */
    public double angleDeg(Joint joint, Limb limb) {
        return anglesDeg[slot(joint, limb)];
    }

    /** The angle of a joint of the own limb, or of the spine or neck, in degrees. */
    public double angleDeg(Joint joint) {
        return anglesDeg[joint.ordinal()];
    }

    /**
     * This posture with one angle changed.
     *
     * @throws IllegalArgumentException if the angle is outside the range of the joint
     */
    public Posture with(Joint joint, Limb limb, double angleDeg) {
        double[] changed = anglesDeg.clone();
        changed[slot(joint, limb)] = joint.checked(angleDeg);
        return new Posture(changed);
    }

    /** This posture with the angle of an own joint changed. */
    public Posture with(Joint joint, double angleDeg) {
        return with(joint, Limb.OWN, angleDeg);
    }

    /** The same body seen from the nerve of the other side; side bending changes its sign. */
    public Posture mirrored() {
        double[] swapped = new double[2 * JOINTS];
        for (Joint joint : Joint.values()) {
            if (joint.paired()) {
                swapped[slot(joint, Limb.OWN)] = angleDeg(joint, Limb.OTHER);
                swapped[slot(joint, Limb.OTHER)] = angleDeg(joint, Limb.OWN);
            } else {
                swapped[joint.ordinal()] = angleDeg(joint);
            }
        }
        // 0.0 - x rather than -x, so that no negative zero appears.
        swapped[Joint.SPINE_SIDE.ordinal()] = 0.0 - angleDeg(Joint.SPINE_SIDE);
        return new Posture(swapped);
    }

    /**
     * The posture part of the way to another one, every angle changing in proportion.
     *
     * @param fraction 0 for this posture, 1 for the other; values outside are refused
     */
    public Posture towards(Posture end, double fraction) {
        if (!(fraction >= 0 && fraction <= 1)) {
            throw new IllegalArgumentException("fraction of a movement must be within 0 and 1, was " + fraction);
        }
        double[] between = new double[anglesDeg.length];
        for (int i = 0; i < between.length; i++) {
            between[i] = anglesDeg[i] + fraction * (end.anglesDeg[i] - anglesDeg[i]);
        }
        return new Posture(between);
    }

    private static int slot(Joint joint, Limb limb) {
        return limb == Limb.OTHER && joint.paired() ? JOINTS + joint.ordinal() : joint.ordinal();
    }

    /** The text form with every joint that is not 0, own limb first; empty for the reference. */
    public String text() {
        var words = new ArrayList<String>();
        for (Limb limb : Limb.values()) {
            for (Joint joint : Joint.values()) {
                if ((limb == Limb.OWN || joint.paired()) && angleDeg(joint, limb) != 0) {
                    words.add((limb == Limb.OTHER ? OTHER_PREFIX : "") + joint.key() + " "
                            + Joint.trimmed(angleDeg(joint, limb)));
                }
            }
        }
        return String.join(" ", words);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Posture posture && Arrays.equals(anglesDeg, posture.anglesDeg);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(anglesDeg);
    }

    @Override
    public String toString() {
        return text().isEmpty() ? "all joints 0" : text();
    }
}
