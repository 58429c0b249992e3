package slipway.care.casefile;

import java.util.List;
import slipway.exercises.yaml.Mistake;

/**
 * What a check of a part of a case found. The mistakes have paths but no lines.
 *
 * @param mistakes what is wrong and must not be kept
 * @param missing what a case must have and this part does not have yet; it may be kept like that
 */
public record PartCheck(List<Mistake> mistakes, List<Mistake> missing) {
    public PartCheck {
        mistakes = List.copyOf(mistakes);
        missing = List.copyOf(missing);
    }

    /** Whether nothing is wrong; something may be missing. */
    public boolean isKeepable() {
        return mistakes.isEmpty();
    }

    /** Whether a case can be made of it. */
    public boolean isComplete() {
        return mistakes.isEmpty() && missing.isEmpty();
    }
}
