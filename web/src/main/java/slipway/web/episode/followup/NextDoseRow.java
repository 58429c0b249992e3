package slipway.web.episode.followup;

import java.util.List;
import java.util.Optional;
import slipway.care.follow.HomeSetting;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.propose.VisitProposal;
import slipway.web.episode.followup.NextDoseForm.Mistake;
import slipway.web.episode.plan.SetDoses.Kept;

/**
 * An exercise at home with what is proposed for it.
 *
 * @param decided what was decided on it since the plan was given, newest first
 * @param typed what the therapist typed, if it could not be taken; the mistakes say why
 */
public record NextDoseRow(
        String name, VisitProposal proposal, List<Kept> decided, Optional<NextDoseForm> typed, List<Mistake> mistakes) {
    public String id() {
        return proposal.exercise();
    }

    /** What is proposed, as a decision keeps it. */
    public HomeSetting proposed() {
        return HomeSetting.of(proposal.dose(), proposal.ceiling());
    }

    /** What is in force, at the whole range. */
    public HomeSetting inForce() {
        return HomeSetting.of(proposal.since().now(), proposal.since().ceiling());
    }

    /** Whether the therapist has refused this very proposal already. */
    public Optional<Kept> refused() {
        return decided.stream()
                .findFirst()
                .filter(kept -> kept.setting().isEmpty()
                        && kept.decision().proposed().equals(proposed().words()));
    }

    /** Whether the proposal goes back to a range that is not done at home now. */
    public boolean widens() {
        return proposal.since().now().rangeFraction() < 1;
    }

    /** Whether anything would change by taking it. */
    public boolean same() {
        HomeDose now = proposal.since().now();
        return !widens()
                && proposed().words().equals(inForce().words())
                && now.sets() == proposed().sets();
    }

    /** What is wrong with a field; empty if nothing. */
    public Optional<String> mistake(String field) {
        return mistakes.stream()
                .filter(each -> each.field().equals(field))
                .map(Mistake::words)
                .findFirst();
    }

    /** Whether this part of the row is open: the one in which something was typed. */
    public boolean typing(String action) {
        return typed.filter(form -> form.action().equals(action)).isPresent();
    }
}
