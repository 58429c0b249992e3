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

    /** Of the angles at which a joint may be held the one with the largest glide; of equals the more usual one. */
    Design design(ExerciseCandidate candidate) {
        List<ExerciseCandidate> eased = candidate.eased();
        Design best = designAt(eased.get(0));
        for (ExerciseCandidate easier : eased.subList(1, eased.size())) {
            Design next = designAt(easier);
            best = glideMm(next) > glideMm(best) + RangeSearch.ROUNDING ? next : best;
        }
        return best;
    }

    /** Below 0 for a refusal; what shows no movement counts as none. */
    private static double glideMm(Design design) {
        if (design instanceof Design.Given given) {
            Effect effect = given.range().effect();
            return effect.movementShown() ? effect.glideMm().median() : 0;
        }
        return -1;
    }

    private Design designAt(ExerciseCandidate candidate) {
        List<Posture> ends = RangeSteps.ends(candidate);
        if (ends.isEmpty()) {
            return refused(candidate, DoseWords.noStep(candidate));
        }
        Posture furthest = ends.get(ends.size() - 1);
        Optional<double[]> limitPct = limit.pct(draws, List.of(candidate.start(), furthest));
        if (limitPct.isEmpty()) {
            return refused(candidate, DoseWords.noTolerance());
        }
        var search = new RangeSearch(draws, guards, site, limitPct.get());
        RangeSearch.Found found = search.run(candidate, ends);
        List<Step> left = new ArrayList<>(found.allowed().stream()
                .filter(step -> travelDeg(candidate, step.end()) >= DoseData.value("smallest-range"))
                .toList());
        while (!left.isEmpty()) {
            Step chosen = chosen(candidate, left);
            Step exact = search.exactly(candidate, chosen);
            if (exact.allowed()) {
                return given(candidate, exact, found, limitPct.get());
            }
            left.remove(chosen);
        }
        return refused(candidate, DoseWords.tooMuch(found.stopped()));
    }

    private static Design refused(ExerciseCandidate candidate, Reason reason) {
        return new Design.Refused(new Refusal(candidate.id(), reason));
    }

    private static boolean maximised(ExerciseCandidate candidate, Step most) {
        return most.glideMm() >= DoseData.value("least-glide") && candidate.purpose() != Purpose.COMFORT;
    }

    private static Step chosen(ExerciseCandidate candidate, List<Step> allowed) {
        Step most = mostGlide(allowed);
        return maximised(candidate, most) ? most : comfortable(candidate, allowed);
    }

    private Design given(ExerciseCandidate candidate, Step chosen, RangeSearch.Found found, double[] limitPct) {
        boolean maximised = maximised(candidate, mostGlide(found.allowed()));
        boolean shown = chosen.glideMm() >= DoseData.value("least-glide");
        Effect effect = chosen.profile().effect(limitPct, shown);
        var reasons = new ArrayList<Reason>();
        reasons.add(DoseWords.peak(effect));
        reasons.add(maximised ? DoseWords.end(chosen, found) : DoseWords.comfort());
        DoseWords.eased(candidate).ifPresent(reasons::add);
        if (!shown) {
            reasons.add(DoseWords.notShown(effect, site));
        } else if (effect.directionUnsure()) {
            reasons.add(DoseWords.directionUnsure(effect, site));
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
