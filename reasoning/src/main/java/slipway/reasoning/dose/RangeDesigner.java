package slipway.reasoning.dose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.dose.RangeSearch.Step;
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

    Design design(ExerciseCandidate candidate) {
        List<Posture> ends = RangeSteps.ends(candidate);
        if (ends.isEmpty()) {
            return refused(candidate, DoseWords.noStep(candidate));
        }
        Posture furthest = ends.get(ends.size() - 1);
        Optional<double[]> limitPct = limit.pct(draws, List.of(candidate.start(), furthest));
        if (limitPct.isEmpty()) {
            return refused(candidate, DoseWords.noTolerance());
        }
        RangeSearch.Found found = new RangeSearch(draws, guards, site, limitPct.get()).run(candidate, ends);
        List<Step> allowed = found.allowed().stream()
                .filter(step -> travelDeg(candidate, step.end()) >= DoseData.value("smallest-range"))
                .toList();
        return allowed.isEmpty()
                ? refused(candidate, DoseWords.tooMuch(found.stopped()))
                : given(candidate, new RangeSearch.Found(allowed, found.stopped()), limitPct.get());
    }

    private static Design refused(ExerciseCandidate candidate, Reason reason) {
        return new Design.Refused(new Refusal(candidate.id(), reason));
    }

    private Design given(ExerciseCandidate candidate, RangeSearch.Found found, double[] limitPct) {
        double leastMm = DoseData.value("least-glide");
        Step most = mostGlide(found.allowed());
        boolean maximised = most.glideMm() >= leastMm && candidate.purpose() != Purpose.COMFORT;
        Step chosen = maximised ? most : comfortable(candidate, found.allowed());
        boolean shown = chosen.glideMm() >= leastMm;
        Effect effect = chosen.profile().effect(limitPct, shown);
        var reasons = new ArrayList<Reason>();
        reasons.add(DoseWords.peak(effect));
        reasons.add(maximised ? DoseWords.end(chosen, found) : DoseWords.comfort());
        if (!shown) {
            reasons.add(DoseWords.notShown(effect, site));
        }
        List<Reason> binding = maximised ? DoseWords.binding(chosen, found) : List.of();
        return new Design.Given(new DesignedRange(candidate, chosen.end(), effect, binding, reasons));
    }

    /** Of equal glides the smaller range. */
    private static Step mostGlide(List<Step> allowed) {
        Step most = allowed.get(0);
        for (Step step : allowed) {
            most = step.glideMm() > most.glideMm() + RangeSearch.ROUNDING ? step : most;
        }
        return most;
    }

    /** The furthest allowed end within the inner range; the nearest one if that is already beyond it. */
    private static Step comfortable(ExerciseCandidate candidate, List<Step> allowed) {
        Movement lead = candidate.lead();
        double mostDeg = DoseData.value("comfort-share") * Math.abs(lead.toDeg() - lead.fromDeg());
        Step chosen = allowed.get(0);
        for (Step step : allowed) {
            chosen = travelDeg(candidate, step.end()) <= mostDeg ? step : chosen;
        }
        return chosen;
    }

    private static double travelDeg(ExerciseCandidate candidate, Posture end) {
        Movement lead = candidate.lead();
        return Math.abs(end.angleDeg(lead.joint(), lead.limb()) - lead.fromDeg());
    }
}
