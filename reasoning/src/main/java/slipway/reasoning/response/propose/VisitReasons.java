package slipway.reasoning.response.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.dose.StartRule;
import slipway.reasoning.response.estimate.EstimateSettings;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.propose.VisitProposal.Candidate;
import slipway.reasoning.response.propose.VisitProposal.Since;

/** Why a visit's dose is what it is: what was reported since the last one, why not more, why not less. */
final class VisitReasons {
    private static final String CHANCE = "probability";

    private VisitReasons() {}

    static List<Reason> of(Since since, HomeDose dose, List<Candidate> candidates, StartRule start) {
        var reasons = new ArrayList<Reason>();
        reasons.add(Reason.finding(
                        "visit.since",
                        since.flares() > 0
                                ? "A flare was reported since this dose was set."
                                : "No flare was reported since this dose was set.")
                .with("sessions reported", since.sessions(), "")
                .with("flares among them", since.flares(), ""));
        reasons.add(notMore(since, dose, candidates, start));
        reasons.add(notLess(dose, candidates));
        return reasons;
    }

    private static Reason notMore(Since since, HomeDose dose, List<Candidate> candidates, StartRule start) {
        Optional<Candidate> barred = candidates.stream()
                .filter(each -> !each.allowed() && each.dose().dailyRepetitions() > dose.dailyRepetitions())
                .findFirst();
        if (barred.isPresent()) {
            return chance(
                    Reason.practice(
                            "visit.not-more", "Not more: the next dose would be beyond the limit of the estimate."),
                    barred.get(),
                    "at " + barred.get().dose().words());
        }
        Reason reason = since.flares() > 0
                ? Reason.practice("visit.not-more", "Not more: after a flare no more than was given or reached.")
                : Reason.practice(
                        "visit.not-more",
                        "Not more: at one visit one step of repetitions, one session a day more, and no more than double"
                                + " the repetitions of a day.");
        return reason.with("repetitions of a day when given", since.given().dailyRepetitions(), "")
                .with("repetitions of a day now", since.now().dailyRepetitions(), "")
                .with("sessions a day at most, by irritability", start.sessionsHigh(), "");
    }

    private static Reason notLess(HomeDose dose, List<Candidate> candidates) {
        Candidate chosen = candidates.stream()
                .filter(each -> each.dose().equals(dose))
                .findFirst()
                .orElseThrow();
        if (chosen.excess().isEmpty()) {
            return Reason.practice(
                    "visit.not-less",
                    "Not less: nothing measured tells the tolerance for this movement; the steps alone decide.");
        }
        return chance(
                Reason.practice(
                        "visit.not-less",
                        chosen.allowed()
                                ? "Not less: the estimate allows it."
                                : "Not less: it is the least dose, and still beyond the limit; consider a pause."),
                chosen,
                "at this dose");
    }

    private static Reason chance(Reason reason, Candidate candidate, String where) {
        Reason with = candidate.excess().isPresent()
                ? reason.with(
                        "excess chance of a flare in 7 days " + where,
                        candidate.excess().getAsDouble(),
                        CHANCE)
                : reason;
        return with.with("limit", EstimateSettings.LIMIT, CHANCE);
    }
}
