package slipway.care.record.assembly;

import java.util.List;
import java.util.Optional;
import slipway.care.casefile.CaseFile;
import slipway.exercises.yaml.Mistake;

/** What came of putting a case together. */
public sealed interface Assembly {
    /**
     * A case.
     *
     * @param text the case file; reading it gives {@code file}
     */
    record Complete(CaseFile file, String text) implements Assembly {}

    /**
     * No case yet.
     *
     * @param mistakes what is wrong, by path
     * @param missing what is not there, by path
     */
    record Incomplete(List<Mistake> mistakes, List<Mistake> missing) implements Assembly {
        public Incomplete {
            mistakes = List.copyOf(mistakes);
            missing = List.copyOf(missing);
        }
    }

    /** The case, if there is one. */
    default Optional<Complete> complete() {
        return this instanceof Complete whole ? Optional.of(whole) : Optional.empty();
    }
}
