package slipway.reasoning.dose;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.irritability.IrritabilityReport;
import slipway.reasoning.tolerance.NeuralFindings;
import slipway.reasoning.tolerance.ToleranceEstimate;

/**
 * Everything that a first dose follows from.
 *
 * @param candidates the more wanted before the less wanted
 * @param blocked why no exercise may be given at all, for example an open emergency question; empty if nothing blocks
 * @param most if present, at most so many are given and no joint leads two of them; empty to give each that may be given
 */
public record DoseCase(
        NeuralFindings neural,
        ToleranceEstimate tolerance,
        IrritabilityReport irritability,
        DoseFindings findings,
        List<ExerciseCandidate> candidates,
        Optional<Reason> blocked,
        OptionalInt most) {
    public DoseCase {
        candidates = List.copyOf(candidates);
        var seen = new HashSet<String>();
        for (ExerciseCandidate candidate : candidates) {
            if (!seen.add(candidate.id())) {
                throw new IllegalArgumentException("the exercise " + candidate.id() + " is offered twice");
            }
        }
    }

    /** A case in which each exercise that may be given is given. */
    public DoseCase(
            NeuralFindings neural,
            ToleranceEstimate tolerance,
            IrritabilityReport irritability,
            DoseFindings findings,
            List<ExerciseCandidate> candidates,
            Optional<Reason> blocked) {
        this(neural, tolerance, irritability, findings, candidates, blocked, OptionalInt.empty());
    }

    /** The irritability by which the dose starts: a level higher if the screening says to start lower. */
    Irritability startLevel() {
        Irritability level = irritability.level();
        boolean lower = findings.limits().contains(DoseLimit.START_LOWER);
        return lower && level != Irritability.HIGH ? Irritability.values()[level.ordinal() + 1] : level;
    }
}
