package slipway.reasoning.dose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.tolerance.LoadDraws;
import slipway.reasoning.tolerance.SuspectedSite;

/**
 * Plans the first dose: which exercises, in which order, how far and how often. Lying comes before sitting and standing;
 * within that the joint furthest from the site comes first.
 */
public final class DosePlanner {
    private final DoseCase dose;
    private final StartRule rule;

    private DosePlanner(DoseCase dose) {
        this.dose = dose;
        this.rule = StartRule.of(dose.startLevel());
    }

    /** The plan; the same case gives the same plan. */
    public static DosePlan plan(DoseCase dose) {
        return new DosePlanner(dose).run();
    }

    private DosePlan run() {
        Optional<LoadDraws> draws = dose.tolerance().draws();
        Optional<Site> site = leadingSite();
        Optional<Reason> forbidden = Eligibility.forbidsAll(dose);
        if (forbidden.isPresent()) {
            List<Refusal> all = dose.candidates().stream()
                    .map(candidate -> new Refusal(candidate.id(), forbidden.get()))
                    .toList();
            return new DosePlan(site, List.of(), all, List.of(), List.of(DoseWords.review()));
        }
        // Not blocked means that more than half of the weight is modelled, so there are draws and a site.
        return design(draws.orElseThrow(), site.orElseThrow());
    }

    private DosePlan design(LoadDraws draws, Site site) {
        boolean proximal = draws.sites().stream().anyMatch(LoadDraws::proximal);
        var guards = Guards.of(dose.neural(), dose.findings(), dose.startLevel(), proximal);
        LoadLimit limit = dose.neural().symptomsAtRest()
                ? new LoadLimit.Fixed(DoseData.get("remote-load"))
                : new LoadLimit.Share(rule.fraction());
        var designer = new RangeDesigner(draws, guards, site, limit);
        List<ExerciseCandidate> ordered = ordered(site);
        Selection selection = dose.most().isPresent()
                ? Selection.bestOfEachJoint(dose, site, designer, ordered)
                : Selection.all(dose, site, designer, ordered);
        List<DosedExercise> given = selection.given().stream()
                .map(range -> new DosedExercise(range, Dose.start(rule)))
                .toList();
        List<Refusal> refused = selection.refused();
        return new DosePlan(Optional.of(site), given, refused, selection.passedOver(), notes(given, refused));
    }

    private List<ExerciseCandidate> ordered(Site site) {
        Comparator<ExerciseCandidate> order = Comparator.<ExerciseCandidate>comparingInt(
                        candidate -> Eligibility.positionRank(candidate.support()))
                .thenComparing(candidate -> candidate.lead().limb())
                .thenComparing(
                        candidate -> Pathway.distance(candidate.lead().joint(), site), Comparator.reverseOrder());
        return dose.candidates().stream().sorted(order).toList();
    }

    private List<Reason> notes(List<DosedExercise> given, List<Refusal> refused) {
        var notes = new ArrayList<Reason>();
        if (!given.isEmpty()) {
            notes.add(DoseWords.triedFirst());
        }
        if (given.size() > DoseData.value("most-exercises")) {
            notes.add(DoseWords.many(given.size()));
        }
        if (given.isEmpty()) {
            notes.add(DoseWords.review());
        }
        if (!refused.isEmpty()) {
            notes.add(DoseWords.instead(given, otherLegAllowed()));
        }
        return notes;
    }

    private boolean otherLegAllowed() {
        return !dose.neural().crossedPositive();
    }

    /** Of equal suspicions the one named first. */
    private Optional<Site> leadingSite() {
        return dose.neural().sites().stream()
                .filter(site -> site.site().isPresent())
                .sorted(Comparator.comparingDouble(SuspectedSite::weight).reversed())
                .findFirst()
                .flatMap(SuspectedSite::site);
    }
}
