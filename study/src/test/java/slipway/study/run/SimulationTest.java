package slipway.study.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import slipway.study.load.LoadTables;
import slipway.study.world.World;
import slipway.study.world.Worlds;

class SimulationTest {
    private static final Simulation SIMULATION = new Simulation(LoadTables.compute());
    private static final StudyPlan PLAN = new StudyPlan(120, 21, 42, "test");

    private static StudyState run(int threads) {
        var state = new StudyState(PLAN);
        new StudyRun(SIMULATION).run(state, threads, () -> false, () -> {});
        return state;
    }

    @Test
    void resultsDoNotDependOnTheNumberOfThreads() {
        StudyState one = run(1);
        StudyState three = run(3);
        assertThat(one.complete()).isTrue();
        for (int world = 0; world < PLAN.worlds().size(); world++) {
            assertThat(three.tally(world).numbers()).isEqualTo(one.tally(world).numbers());
        }
    }

    @Test
    void resultsDoNotDependOnTheOrderOfPeople() {
        World world = Worlds.get("restless");
        Tally forwards = SIMULATION.run(PLAN, world, 0, 60);
        var backwards = new Tally(PLAN.policies().size(), PLAN.days());
        for (long number = 59; number >= 0; number--) {
            backwards.add(SIMULATION.run(PLAN, world, number, number + 1));
        }
        assertThat(backwards.numbers()).isEqualTo(forwards.numbers());
    }

    @Test
    void aRunThatWasStoppedAndGoesOnEndsLikeOneThatWasNot() {
        var state = new StudyState(PLAN);
        var batches = new AtomicInteger();
        new StudyRun(SIMULATION).run(state, 2, () -> batches.get() >= 5, batches::incrementAndGet);
        assertThat(state.complete()).isFalse();
        var resumed = new StudyState(PLAN);
        for (int world = 0; world < PLAN.worlds().size(); world++) {
            resumed.restore(world, state.doneWords(world), state.tally(world).numbers());
        }
        new StudyRun(SIMULATION).run(resumed, 2, () -> false, () -> {});
        StudyState whole = run(1);
        for (int world = 0; world < PLAN.worlds().size(); world++) {
            assertThat(resumed.tally(world).numbers())
                    .isEqualTo(whole.tally(world).numbers());
        }
    }

    @Test
    void allWaysOfDosingMeetTheSameSignsOfDanger() {
        World world = Worlds.get("red-flags");
        var plan = new StudyPlan(200, 28, 3, "test");
        Tally tally = SIMULATION.run(plan, world, 0, 200);
        // A sign that is open hides a second one of its kind, and answers come at different times: nearly the same.
        double main = tally.sum(0, Measure.EVENTS);
        for (int policy = 1; policy < plan.policies().size(); policy++) {
            assertThat(tally.sum(policy, Measure.EVENTS) / main).isBetween(0.9, 1.15);
        }
        assertThat(main).isPositive();
    }

    @Test
    void noReportedSignOfDangerIsMissedInAnyWorld() {
        for (World world : PLAN.worlds()) {
            Tally tally = SIMULATION.run(PLAN, world, 0, 100);
            for (int policy = 0; policy < PLAN.policies().size(); policy++) {
                assertThat(tally.sum(policy, Measure.MISSED_SAFETY))
                        .as(world.id())
                        .isZero();
            }
        }
    }
}
