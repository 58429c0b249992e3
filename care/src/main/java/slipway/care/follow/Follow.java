package slipway.care.follow;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.response.checkin.CheckIn;
import slipway.reasoning.response.propose.DoseSet;
import slipway.reasoning.response.propose.Followed;
import slipway.reasoning.response.propose.FollowedPlan;
import slipway.reasoning.response.propose.Release;
import slipway.reasoning.response.propose.Responder;

/** Answers what a person reported on a plan. */
public final class Follow {
    private Follow() {}

    /**
     * One answer for each check-in.
     *
     * @param asOf reports received after this day, by their own calendar, are left out; empty for all
     * @throws IllegalArgumentException if the screening stops the plan: then nothing was given
     */
    public static Followed of(
            VisitPlan visit, Collection<CheckIn> checkIns, Collection<Release> releases, Optional<LocalDate> asOf) {
        return of(visit, checkIns, releases, List.of(), asOf);
    }

    /**
     * The same with doses that the therapist set between reports, see {@link HomePlan#set}.
     *
     * @throws IllegalArgumentException as above
     */
    public static Followed of(
            VisitPlan visit,
            Collection<CheckIn> checkIns,
            Collection<Release> releases,
            Collection<DoseSet> sets,
            Optional<LocalDate> asOf) {
        if (visit.stopped()) {
            throw new IllegalArgumentException(
                    "the screening stops the plan of case " + visit.file().id());
        }
        return of(FollowPlans.of(visit), checkIns, releases, sets, asOf);
    }

    /** The same for a plan as it is followed. */
    public static Followed of(
            FollowedPlan plan,
            Collection<CheckIn> checkIns,
            Collection<Release> releases,
            Collection<DoseSet> sets,
            Optional<LocalDate> asOf) {
        List<CheckIn> known = checkIns.stream()
                .filter(checkIn ->
                        asOf.isEmpty() || !checkIn.reportedAt().toLocalDate().isAfter(asOf.get()))
                .toList();
        List<Release> released = releases.stream()
                .filter(release -> asOf.isEmpty() || !release.at().toLocalDate().isAfter(asOf.get()))
                .toList();
        List<DoseSet> set = sets.stream()
                .filter(each -> asOf.isEmpty() || !each.at().toLocalDate().isAfter(asOf.get()))
                .toList();
        return Responder.respond(plan, known, released, set);
    }
}
