package slipway.reasoning.response.propose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slipway.reasoning.response.checkin.CheckIn;
import slipway.reasoning.response.checkin.EmergencyAnswer;
import slipway.reasoning.response.checkin.Morning;
import slipway.reasoning.response.estimate.FilterModel;
import slipway.reasoning.response.estimate.FilterState;
import slipway.reasoning.response.estimate.Particles;
import slipway.reasoning.response.rules.Decision;

/** What a log comes to depends on the log alone. */
class ResponderPropertyTest {
    private static final List<Release> NONE = List.of();

    @Test
    void theOrderOfArrivalDoesNotMatter() {
        List<CheckIn> log = log(20);
        Followed inOrder = Responder.respond(Reports.plan(), log, NONE);
        var random = new Random(5);
        for (int i = 0; i < 6; i++) {
            var shuffled = new ArrayList<>(log);
            shuffled.addAll(log.subList(3, 9));
            Collections.shuffle(shuffled, random);
            same(Responder.respond(Reports.plan(), shuffled, NONE), inOrder);
        }
    }

    /** Reports that the dose does not hang on, received in another order: the estimate goes by when sessions began. */
    @Test
    void theEstimateGoesByWhenSessionsBegan() {
        List<CheckIn> log = new ArrayList<>();
        for (int day = 0; day < 6; day++) {
            log.add(Reports.of("first", day, 2, 3, day % 3 + 1));
        }
        Followed inOrder = Responder.respond(Reports.plan(), log, NONE);
        var late = new ArrayList<>(log);
        late.set(1, receivedAfter(log.get(1), log.get(4)));
        late.set(2, receivedAfter(log.get(2), log.get(5)));
        Followed outOfOrder = Responder.respond(Reports.plan(), late, NONE);
        assertThat(bytes(outOfOrder)).isEqualTo(bytes(inOrder));
    }

    @Test
    void aLogThatGrowsGivesTheSameAsTheWholeLog() {
        List<CheckIn> log = log(12);
        Followed whole = Responder.respond(Reports.plan(), log, NONE);
        for (int known = 1; known <= log.size(); known++) {
            Followed part = Responder.respond(Reports.plan(), log.subList(0, known), NONE);
            assertThat(part.results()).isEqualTo(whole.results().subList(0, known));
        }
    }

    /** A restart of the program: the stored bytes go on as if nothing had happened. */
    @Test
    void aStoredEstimateGoesOnAsTheRunningOne() {
        byte[] stored = bytes(Responder.respond(Reports.plan(), log(10), NONE));
        FilterModel model = FilterModel.bundled();
        var running = Particles.from(model, FilterState.of(stored), 42);
        var restarted = Particles.from(model, FilterState.of(running.state().bytes()), 42);
        for (Particles particles : List.of(running, restarted)) {
            particles.advance(1);
            particles.observe(-0.1, 2, 4, 12, 1, 0.02);
            particles.refresh();
        }
        assertThat(restarted.state().bytes()).isEqualTo(running.state().bytes());
        assertThat(running.state().bytes()).isNotEqualTo(stored);
        assertThatThrownBy(() -> FilterState.of(new byte[] {1, 2, 3})).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anIdWithOtherContentIsRefused() {
        CheckIn one = Reports.of("first", 0, 2, 2, 1);
        CheckIn other = Reports.of("first", 0, 2, 9, 1);
        assertThatThrownBy(() -> Responder.respond(Reports.plan(), List.of(one, other), NONE))
                .isInstanceOf(LogConflictException.class)
                .hasMessageContaining("first-0");
    }

    @Test
    void aLaterNoDoesNotUnlockButAClinicianDoes() {
        CheckIn yes = Reports.of("first", 0, 2, 2, 1, Morning.SAME, EmergencyAnswer.YES);
        CheckIn no = Reports.of("second", 1, 2, 2, 1);
        Followed locked = Responder.respond(Reports.plan(), List.of(yes, no), NONE);
        assertThat(locked.results())
                .extracting(RespondResult::decision)
                .containsExactly(Decision.EMERGENCY, Decision.STAY_STOPPED);
        assertThat(locked.results()).allSatisfy(result -> {
            assertThat(result.nextDose()).isEmpty();
            assertThat(result.excessFlareChance()).isEmpty();
        });
        assertThat(locked.forecasts()).isEmpty();
        var release = new Release("r1", "therapist", yes.reportedAt().plusHours(1));
        Followed released = Responder.respond(Reports.plan(), List.of(yes, no), List.of(release));
        assertThat(released.results().get(1).nextDose()).isPresent();
    }

    private static void same(Followed one, Followed other) {
        assertThat(one.results()).isEqualTo(other.results());
        assertThat(one.state().courses()).isEqualTo(other.state().courses());
        assertThat(one.forecasts()).isEqualTo(other.forecasts());
        assertThat(bytes(one)).isEqualTo(bytes(other));
    }

    private static byte[] bytes(Followed followed) {
        return followed.state().filter().orElseThrow().bytes();
    }

    private static CheckIn receivedAfter(CheckIn late, CheckIn than) {
        return new CheckIn(
                late.id(),
                late.sessionId(),
                late.exercise(),
                late.startedAt(),
                late.before(),
                late.repetitionsDone(),
                late.worst(),
                late.kind(),
                late.usualPain(),
                late.reach(),
                late.settleMinutes(),
                late.nextMorning(),
                late.stillNumb(),
                late.newWeakness(),
                late.emergency(),
                late.flareExercise(),
                than.reportedAt().plusMinutes(1));
    }

    private static List<CheckIn> log(int days) {
        var random = new Random(3);
        var log = new ArrayList<CheckIn>();
        for (int day = 0; day < days; day++) {
            for (String exercise : List.of("first", "second")) {
                int before = random.nextInt(3);
                Morning morning = random.nextInt(15) == 0 ? Morning.WORSE : Morning.SAME;
                int worst = before + (random.nextInt(8) == 0 ? 3 : random.nextInt(2));
                log.add(Reports.of(exercise, day, before, worst, random.nextInt(4), morning, EmergencyAnswer.NO));
            }
        }
        return log;
    }
}
