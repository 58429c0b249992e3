package slipway.documents.paper;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipway.care.facts.EpisodeFacts;
import slipway.care.facts.Treatment;
import slipway.care.follow.Follow;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.billing.UnitRule;
import slipway.reasoning.codes.DiagnosisCodes;
import slipway.reasoning.course.CourseReport;
import slipway.reasoning.response.propose.Followed;

/**
 * What a paper is put together from.
 *
 * @param plan made from the case
 * @param day the paper is dated with; nothing later goes in
 * @param course where the episode stands on that day; empty if no day of care is known
 * @param followed what came of the reports from home; empty if the plan is stopped or nothing was reported
 * @param unitRule how the payer counts minutes; empty if that is not set
 * @param codes the diagnosis codes of the clinic
 */
public record PaperInput(
        EpisodeFacts facts,
        VisitPlan plan,
        LocalDate day,
        Optional<CourseReport> course,
        Optional<Followed> followed,
        Optional<UnitRule> unitRule,
        DiagnosisCodes codes) {
    /** What there is on a day, with the codes that ship with the program. */
    public static PaperInput of(EpisodeFacts facts, VisitPlan plan, LocalDate day, Optional<UnitRule> unitRule) {
        Optional<Followed> followed = plan.stopped() || facts.checkIns().isEmpty()
                ? Optional.empty()
                : Optional.of(Follow.of(plan, facts.checkIns(), List.of(), Optional.of(day)));
        return new PaperInput(facts, plan, day, facts.course(day), followed, unitRule, DiagnosisCodes.bundled());
    }

    /** The visits up to the day. */
    List<Treatment> visits() {
        return facts.visitsUpTo(day);
    }

    /** The last visit up to the day. */
    Optional<Treatment> lastVisit() {
        List<Treatment> visits = visits();
        return visits.isEmpty() ? Optional.empty() : Optional.of(visits.get(visits.size() - 1));
    }

    /** First day of the time that a progress report covers: the day after the last one, or the first day of care. */
    Optional<LocalDate> periodStart() {
        return facts.frame().days("progress-report").stream()
                .filter(sent -> sent.isBefore(day))
                .reduce((first, second) -> second)
                .map(last -> last.plusDays(1))
                .or(facts::start);
    }
}
