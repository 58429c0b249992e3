package slipway.reasoning.response.propose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slipway.reasoning.dose.StartRule;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.response.checkin.CheckIn;
import slipway.reasoning.response.checkin.EmergencyAnswer;
import slipway.reasoning.response.checkin.Morning;
import slipway.reasoning.response.estimate.EstimateSettings;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.ladder.Ladder;

class VisitProposalsTest {
    private static final StartRule START = StartRule.of(Irritability.MODERATE);

    private static List<CheckIn> good(int from, int days) {
        return IntStream.range(from, from + days)
                .mapToObj(day -> Reports.of("first", day, 2, 2, 1))
                .toList();
    }

    private static DoseSet set(int day, HomeDose dose) {
        Ladder ladder = Ladder.through(dose, VisitProposals.ceiling(dose, START));
        List<Double> peaks =
                ladder.rungs().stream().map(rung -> 0.7 * rung.rangeFraction()).toList();
        return new DoseSet("d" + day, Reports.FIRST.plusDays(day), new FollowedExercise("first", ladder, false, peaks));
    }

    private static VisitProposal first(List<CheckIn> log, List<DoseSet> sets) {
        Followed followed = Responder.respond(Reports.plan(), log, List.of(), sets);
        return VisitProposals.of(Reports.plan(), sets, followed, START).get(0);
    }

    @Test
    void proposesTheMostWithinTheLimitAndShowsEveryCandidateWithItsChance() {
        VisitProposal proposal = first(good(0, 6), List.of());
        assertThat(proposal.since().sessions()).isEqualTo(6);
        assertThat(proposal.since().flares()).isZero();
        assertThat(proposal.candidates())
                .allSatisfy(each ->
                        assertThat(each.allowed()).isEqualTo(each.excess().orElseThrow() <= EstimateSettings.LIMIT));
        int most = proposal.candidates().stream()
                .filter(VisitProposal.Candidate::allowed)
                .mapToInt(each -> each.dose().dailyRepetitions())
                .max()
                .orElseThrow();
        assertThat(proposal.dose().dailyRepetitions()).isEqualTo(most);
        assertThat(proposal.ceiling().allows(proposal.dose())).isTrue();
    }

    @Test
    void aFlareBringsNoMoreThanWasGiven() {
        List<CheckIn> log = new ArrayList<>(good(0, 3));
        log.add(Reports.of("first", 3, 2, 8, 45, Morning.WORSE, EmergencyAnswer.NO));
        VisitProposal proposal = first(log, List.of());
        assertThat(proposal.since().flares()).isEqualTo(1);
        assertThat(proposal.dose().dailyRepetitions())
                .isLessThanOrEqualTo(proposal.since().given().dailyRepetitions());
    }

    @Test
    void nothingIsProposedWhileEverythingIsStopped() {
        var log = List.of(Reports.of("first", 0, 2, 2, 1, Morning.SAME, EmergencyAnswer.YES));
        Followed followed = Responder.respond(Reports.plan(), log, List.of());
        assertThat(VisitProposals.of(Reports.plan(), List.of(), followed, START))
                .isEmpty();
    }

    @Test
    void aDoseThatWasSetIsInForceFromThenOnAndItsCeilingBinds() {
        HomeDose dose = new HomeDose(8, 1, 2, 1, 3);
        DoseSet set = set(4, dose);
        List<CheckIn> before = good(0, 3);
        List<CheckIn> all = new ArrayList<>(before);
        all.addAll(good(4, 8));
        Followed without = Responder.respond(Reports.plan(), before, List.of());
        Followed with = Responder.respond(Reports.plan(), all, List.of(), List.of(set));
        // What was answered before stays as it was answered.
        assertThat(with.results().subList(0, 3)).isEqualTo(without.results());
        assertThat(with.results().get(3).nextDose().orElseThrow().dose()).isEqualTo(dose);
        Ceiling ceiling = set.exercise().ladder().ceiling();
        assertThat(with.results().subList(3, all.size())).allSatisfy(result -> {
            assertThat(result.ceiling().repetitions()).isEqualTo(ceiling.repetitions());
            result.nextDose()
                    .ifPresent(next -> assertThat(ceiling.allows(next.dose())).isTrue());
        });
        assertThat(first(before, List.of(set)).since().reported()).isFalse();
    }

    @Test
    void aMorningToldAfterTheDoseWasSetCountsForTheDoseThatWasDone() {
        List<CheckIn> log = good(0, 4);
        Followed before = Responder.respond(Reports.plan(), log, List.of());
        CheckIn again = Reports.again(log.get(3), Reports.FIRST.plusDays(5));
        List<CheckIn> more = new ArrayList<>(log);
        more.add(again);
        Followed after =
                Responder.respond(Reports.plan(), more, List.of(), List.of(set(4, new HomeDose(10, 1, 2, 1, 3))));
        assertThat(after.state().filter().orElseThrow().bytes())
                .isEqualTo(before.state().filter().orElseThrow().bytes());
    }

    @Test
    void refusesADoseForAnExerciseThatWasNotGiven() {
        var other = new FollowedExercise("other", Reports.LADDER, false, List.of());
        var set = new DoseSet("d", Reports.FIRST, other);
        assertThatThrownBy(() -> Responder.respond(Reports.plan(), List.of(), List.of(), List.of(set)))
                .isInstanceOf(LogConflictException.class)
                .hasMessageContaining("other");
    }
}
