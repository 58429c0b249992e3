package slipway.reasoning.dose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.irritability.Irritability;

/**
 * Which of the candidates are given. Of those that one joint leads in one position a few are designed and the one that
 * serves this person best is given: a glide of known direction before one of unknown, then the one that slides the nerve
 * most at the site within the limits. With high irritability it is the first that may be given at all.
 */
final class Selection {
    private final DoseCase dose;
    private final Site site;
    private final RangeDesigner designer;
    private final List<DesignedRange> given = new ArrayList<>();
    private final List<Refusal> refused = new ArrayList<>();
    private final List<Refusal> passedOver = new ArrayList<>();

    private Selection(DoseCase dose, Site site, RangeDesigner designer) {
        this.dose = dose;
        this.site = site;
        this.designer = designer;
    }

    /** Each one that may be given. */
    static Selection all(DoseCase dose, Site site, RangeDesigner designer, List<ExerciseCandidate> ordered) {
        var selection = new Selection(dose, site, designer);
        ordered.forEach(candidate -> selection.design(candidate).ifPresent(selection.given::add));
        return selection;
    }

    /** One for each leading joint, as many as the case wants at most. */
    static Selection bestOfEachJoint(
            DoseCase dose, Site site, RangeDesigner designer, List<ExerciseCandidate> ordered) {
        var selection = new Selection(dose, site, designer);
        int from = 0;
        while (from < ordered.size()) {
            int to = from + 1;
            while (to < ordered.size() && alike(ordered.get(from), ordered.get(to))) {
                to++;
            }
            selection.bestOf(ordered.subList(from, to));
            from = to;
        }
        return selection;
    }

    private static boolean alike(ExerciseCandidate one, ExerciseCandidate other) {
        return one.leadsLike(other)
                && Eligibility.positionRank(one.support()) == Eligibility.positionRank(other.support());
    }

    /** In the order in which they are tried. */
    List<DesignedRange> given() {
        return given;
    }

    List<Refusal> refused() {
        return refused;
    }

    List<Refusal> passedOver() {
        return passedOver;
    }

    private void bestOf(List<ExerciseCandidate> alike) {
        Optional<Reason> full = full(alike.get(0));
        if (full.isPresent()) {
            alike.forEach(candidate -> passOver(candidate, full.get()));
            return;
        }
        int most = dose.startLevel() == Irritability.HIGH ? 1 : (int) DoseData.value("contenders-per-joint");
        var designed = new ArrayList<DesignedRange>();
        var left = new ArrayList<ExerciseCandidate>();
        for (ExerciseCandidate candidate : alike) {
            if (designed.size() < most) {
                design(candidate).ifPresent(designed::add);
            } else {
                left.add(candidate);
            }
        }
        if (!designed.isEmpty()) {
            give(designed, left);
        }
    }

    private void give(List<DesignedRange> designed, List<ExerciseCandidate> left) {
        DesignedRange best = designed.get(0);
        for (DesignedRange next : designed) {
            best = better(next, best) ? next : best;
        }
        given.add(best);
        for (DesignedRange other : designed) {
            if (!other.candidate().id().equals(best.candidate().id())) {
                passOver(other.candidate(), ChoiceWords.less(best, other, site));
            }
        }
        for (ExerciseCandidate candidate : left) {
            passOver(candidate, ChoiceWords.sameJoint(best.candidate(), candidate));
        }
    }

    /** A glide whose direction is known is worth more than any whose is not; of equals the first stays. */
    private boolean better(DesignedRange next, DesignedRange best) {
        boolean nextKnown = known(next.effect());
        boolean bestKnown = known(best.effect());
        return nextKnown == bestKnown ? worth(next.effect()) > worth(best.effect()) + RangeSearch.ROUNDING : nextKnown;
    }

    private static boolean known(Effect effect) {
        return effect.movementShown() && !effect.directionUnsure();
    }

    private static double worth(Effect effect) {
        return effect.movementShown() ? effect.glideMm().median() : 0;
    }

    private Optional<DesignedRange> design(ExerciseCandidate candidate) {
        Optional<Reason> forbidden = Eligibility.forbids(candidate, dose, site);
        Design design = forbidden
                .<Design>map(reason -> new Design.Refused(new Refusal(candidate.id(), reason)))
                .orElseGet(() -> designer.design(candidate));
        if (design instanceof Design.Refused no) {
            refused.add(no.refusal());
            return Optional.empty();
        }
        return Optional.of(((Design.Given) design).range());
    }

    private void passOver(ExerciseCandidate candidate, Reason reason) {
        passedOver.add(new Refusal(candidate.id(), reason));
    }

    /** Why there is no room for an exercise beside those that are given; empty if there is. */
    private Optional<Reason> full(ExerciseCandidate candidate) {
        Optional<Reason> same = given.stream()
                .map(DesignedRange::candidate)
                .filter(other -> other.leadsLike(candidate))
                .findFirst()
                .map(other -> ChoiceWords.sameJoint(other, candidate));
        boolean enough = given.size() >= dose.most().orElse(Integer.MAX_VALUE);
        return same.isEmpty() && enough ? Optional.of(ChoiceWords.enough(given.size())) : same;
    }
}
