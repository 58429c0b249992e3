package slipway.reasoning.screening;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipway.reasoning.findings.FindingKind;

/** What makes a screening rule match. */
public sealed interface Trigger {
    /**
     * The person answers yes.
     *
     * @param region the limb that the question concerns
     */
    record Question(Region region) implements Trigger {}

    /**
     * A finding shows it.
     *
     * @param kind kind of finding; any kind if empty
     * @param targets words of the vocabulary, canonical
     * @param gradeAtMost for strength, the largest grade that counts (5 for any weakness)
     * @param bothSides whether both sides must show it
     * @param ungradedCounts whether weakness without a grade counts
     */
    record Sign(
            Optional<FindingKind> kind,
            Set<String> targets,
            double gradeAtMost,
            boolean bothSides,
            boolean ungradedCounts)
            implements Trigger {
        public Sign {
            targets = Set.copyOf(targets);
        }
    }

    /** At least so many of these rules match. */
    record Cluster(int atLeast, List<String> of) implements Trigger {
        public Cluster {
            if (atLeast < 1 || atLeast > of.size()) {
                throw new IllegalArgumentException(
                        "a cluster of %d rules cannot need %d of them".formatted(of.size(), atLeast));
            }
            of = List.copyOf(of);
        }
    }

    /** Age in years outside these bounds. */
    record Age(int youngerThan, int olderThan) implements Trigger {}

    /** The Wells score: likely, or unlikely although a thrombosis was suspected. */
    record Wells(boolean likely) implements Trigger {}

    /** Another matched rule was cleared by a clinician. */
    record Cleared() implements Trigger {}
}
