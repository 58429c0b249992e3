package slipway.reasoning.dose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.tolerance.LoadDraws;
import slipway.reasoning.tolerance.Movement;

/**
 * Finds the range of an exercise: the end posture with the largest glide at the site among those that no guard forbids
 * anywhere on the way and whose peak load stays below the limit in at least 9 of 10 weighted draws. Cost: one posture
 * per 5 deg of the leading joint, shared between exercises that pass the same postures.
 */
final class RangeDesigner {
    private final LoadDraws draws;
    private final Guards guards;
    private final Site site;
    private final LoadLimit limit;

    RangeDesigner(LoadDraws draws, Guards guards, Site site, LoadLimit limit) {
        this.draws = draws;
        this.guards = guards;
        this.site = site;
        this.limit = limit;
    }

    /** One end posture, tried along its whole way. */
    private record Step(
            int index, LoadProfile profile, double glideMm, double probabilityAbove, List<Reason> forbidden) {
        boolean allowed() {
            return forbidden.isEmpty() && probabilityAbove <= 1 - DoseData.value("chance-below-limit") + ROUNDING;
        }
    }

    /** Sums of a few thousand weights carry this much rounding. */
    private static final double ROUNDING = 1e-9;

    Design design(ExerciseCandidate candidate) {
        List<Posture> ends = RangeSteps.ends(candidate);
        if (ends.isEmpty()) {
            return refused(candidate, DoseWords.noStep(candidate));
        }
        Optional<double[]> limitPct = limit.pct(draws, List.of(candidate.start(), ends.get(ends.size() - 1)));
        if (limitPct.isEmpty()) {
            return refused(candidate, DoseWords.noTolerance());
        }
        var allowed = new ArrayList<Step>();
        Optional<Step> stopped = Optional.empty();
        for (int i = 0; i < ends.size() && stopped.isEmpty(); i++) {
            Step step = tried(candidate, ends, i, limitPct.get());
            if (step.allowed()) {
                allowed.add(step);
            } else {
                stopped = Optional.of(step);
            }
        }
        allowed.removeIf(step -> travelDeg(candidate, ends.get(step.index)) < DoseData.value("smallest-range"));
        if (allowed.isEmpty()) {
            return refused(
                    candidate,
                    DoseWords.tooMuch(
                            stopped.map(Step::forbidden).orElse(List.of()),
                            stopped.map(Step::probabilityAbove).orElse(0.0)));
        }
        return given(candidate, ends, allowed, stopped, limitPct.get());
    }

    private static Design refused(ExerciseCandidate candidate, Reason reason) {
        return new Design.Refused(new Refusal(candidate.id(), reason));
    }

    /** Every end is tried with its own, already rounded angles: the chance is that of the range which is given. */
    private Step tried(ExerciseCandidate candidate, List<Posture> ends, int index, double[] limitPct) {
        List<Posture> way = RangeSteps.way(candidate, ends, index);
        draws.prepare(way);
        var profile = new LoadProfile(draws, site, way.get(0));
        var forbidden = new ArrayList<Reason>(guards.forbids(way.get(0)));
        for (Posture posture : way.subList(1, way.size())) {
            profile.add(posture);
            if (forbidden.isEmpty()) {
                forbidden.addAll(guards.forbids(posture));
            }
        }
        return new Step(index, profile, profile.glideMm(), profile.probabilityAbove(limitPct), forbidden);
    }

    private Design given(
            ExerciseCandidate candidate,
            List<Posture> ends,
            List<Step> allowed,
            Optional<Step> stopped,
            double[] limitPct) {
        Step most = allowed.get(0);
        for (Step step : allowed) {
            // Strictly more: of equal glides the smaller range.
            most = step.glideMm > most.glideMm + ROUNDING ? step : most;
        }
        boolean shown = most.glideMm >= DoseData.value("least-glide");
        boolean maximised = shown && candidate.purpose() != Purpose.COMFORT;
        Step chosen = maximised ? most : comfortable(candidate, ends, allowed);
        shown = chosen.glideMm >= DoseData.value("least-glide");
        List<Reason> binding = maximised ? stopped.map(Step::forbidden).orElse(List.of()) : List.of();
        Effect effect = chosen.profile.effect(limitPct, shown);
        var reasons = new ArrayList<Reason>();
        reasons.add(DoseWords.peak(effect));
        reasons.add(DoseWords.end(maximised, stopped.isPresent(), !binding.isEmpty()));
        if (!shown) {
            reasons.add(DoseWords.notShown(effect, site));
        }
        return new Design.Given(new DesignedRange(candidate, ends.get(chosen.index), effect, binding, reasons));
    }

    /** The furthest allowed end within the middle range; the nearest one if that is already beyond it. */
    private static Step comfortable(ExerciseCandidate candidate, List<Posture> ends, List<Step> allowed) {
        Movement lead = candidate.lead();
        double mostDeg = DoseData.value("comfort-share") * Math.abs(lead.toDeg() - lead.fromDeg());
        Step chosen = allowed.get(0);
        for (Step step : allowed) {
            chosen = travelDeg(candidate, ends.get(step.index)) <= mostDeg ? step : chosen;
        }
        return chosen;
    }

    private static double travelDeg(ExerciseCandidate candidate, Posture end) {
        Movement lead = candidate.lead();
        return Math.abs(end.angleDeg(lead.joint(), lead.limb()) - lead.fromDeg());
    }
}
