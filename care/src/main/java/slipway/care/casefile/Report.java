package slipway.care.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.MistakesException;
import slipway.exercises.yaml.Pointers;
import slipway.exercises.yaml.YamlDocument;
import slipway.mechanics.body.Joint;

/** The mistakes found so far in one file. Readers add to it, leave out what is broken and go on. */
final class Report {
    private final YamlDocument document;
    private final List<Mistake> mistakes = new ArrayList<>();

    /** Whether places are told as paths, because there is no text with lines. */
    private final boolean byPath;

    Report(YamlDocument document) {
        this(document, false);
    }

    private Report(YamlDocument document, boolean byPath) {
        this.document = document;
        this.byPath = byPath;
    }

    /** A report on values that were never a text, such as those of a form. */
    static Report byPath(YamlDocument document) {
        return new Report(document, true);
    }

    /** What was found so far. */
    List<Mistake> mistakes() {
        return List.copyOf(mistakes);
    }

    void add(Fields at, String message) {
        mistakes.add(document.mistake(at.pointer(), message));
    }

    /** What several values get wrong together: said beside each of them in a form, once in a file. */
    void addTogether(Fields inFile, List<Fields> inForm, String message) {
        if (byPath && !inForm.isEmpty()) {
            inForm.forEach(at -> add(at, message));
        } else {
            add(inFile, message);
        }
    }

    void addAll(List<Mistake> more) {
        mistakes.addAll(more);
    }

    /** A joint angle in degrees if the joint can take it; otherwise empty, and one mistake more. */
    OptionalDouble checkedDeg(Fields at, Joint joint, double angleDeg) {
        try {
            return OptionalDouble.of(joint.checked(angleDeg));
        } catch (IllegalArgumentException e) {
            add(at, String.valueOf(e.getMessage()));
            return OptionalDouble.empty();
        }
    }

    /** Where a value stands, for example {@code line 31}. */
    String lineOf(Fields at) {
        return byPath
                ? Pointers.shown(at.pointer())
                : "line " + document.mistake(at.pointer(), "").line();
    }

    /** Ends the reading if there was any mistake. */
    void throwIfAny() {
        if (!mistakes.isEmpty()) {
            throw new MistakesException(document.source(), mistakes);
        }
    }
}
