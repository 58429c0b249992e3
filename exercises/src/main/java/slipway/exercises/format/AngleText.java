package slipway.exercises.format;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipway.exercises.exercise.BodyJoint;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.YamlDocument;
import slipway.mechanics.body.Posture;

/**
 * The text of a pose: posture text in which the word {@code open} may stand for an angle.
 *
 * @param fixed the pairs with a number, as posture text
 * @param open the joints whose angle is open
 */
record AngleText(String fixed, Set<BodyJoint> open) {
    private static final String OPEN = "open";

    /** Reads one text and notes the mistakes in it; what is wrong is left out. */
    static AngleText read(YamlDocument document, String pointer, String text, List<Mistake> mistakes) {
        var fixed = new ArrayList<String>();
        var open = new LinkedHashSet<BodyJoint>();
        String[] words = text.isBlank() ? new String[0] : text.strip().split("\\s+", -1);
        for (int i = 0; i < words.length; i += 2) {
            if (i + 1 < words.length && words[i + 1].equals(OPEN)) {
                Optional<BodyJoint> joint = BodyJoint.find(words[i]);
                if (joint.isEmpty() || !open.add(joint.orElseThrow())) {
                    mistakes.add(document.mistake(pointer, "unknown or repeated joint \"%s\"".formatted(words[i])));
                }
            } else {
                fixed.add(words[i]);
                if (i + 1 < words.length) {
                    fixed.add(words[i + 1]);
                }
            }
        }
        return new AngleText(String.join(" ", fixed), open);
    }

    /** The base with the numbers of this text; the base itself, and a mistake noted, if they cannot be read. */
    Posture on(Posture base, YamlDocument document, String pointer, List<Mistake> mistakes) {
        try {
            return base.withParsed(fixed);
        } catch (IllegalArgumentException e) {
            mistakes.add(document.mistake(pointer, String.valueOf(e.getMessage())));
            return base;
        }
    }
}
