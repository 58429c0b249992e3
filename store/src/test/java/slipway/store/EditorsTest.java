package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.Saving;
import slipway.care.record.access.Reach;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.care.record.follow.Receipt;

/** Several at once. Every round all start at the same moment. */
class EditorsTest {
    private static final int ROUNDS = 20;

    @ParameterizedTest
    @EnumSource
    void ofTwoWhoSaveAtOnceOneIsToldAndTheOtherIsKept(Databases kind) throws Exception {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Chart chart = world.chart(world.person("Ines Palo", act), act);
            for (int round = 0; round < ROUNDS; round++) {
                long version = round;
                List<Saving<SectionRecord>> both = atOnce(List.of(
                        () -> chart.save(Section.SITES, version, World.json("{\"sites\":{\"by\":1}}")),
                        () -> chart.save(Section.SITES, version, World.json("{\"sites\":{\"by\":2}}"))));

                SectionRecord now = chart.section(Section.SITES);
                assertThat(now.version()).isEqualTo(version + 1);
                assertThat(both).containsOnlyOnce(new Saving.Saved<>(now));
                assertThat(both).containsOnlyOnce(new Saving.Stale<>(now));
            }
            assertThat(world.records.trail().verify().breaks()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void aCheckInThatIsSentFromTwoWindowsIsKeptOnce(Databases kind) throws Exception {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Chart chart = world.chart(world.person("Ines Palo", act), act);
            for (int round = 0; round < ROUNDS; round++) {
                String id = "check-in-" + round;
                Callable<Receipt> send = () -> chart.checkIns().add(id, "s", "some-glide", World.json("{\"worst\":2}"));
                assertThat(atOnce(List.of(send, send, send)))
                        .filteredOn(Receipt.Taken.class::isInstance)
                        .hasSize(1);
            }
            assertThat(chart.checkIns().list()).hasSize(ROUNDS);
            assertThat(world.records.trail().verify().breaks()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void manyPeopleAtOnceDoNotDisturbEachOther(Databases kind) throws Exception {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            var work = new ArrayList<Callable<Long>>();
            for (int i = 0; i < 8; i++) {
                Chart chart = world.chart(world.person("Person " + i, act), act);
                work.add(() -> {
                    for (int version = 0; version < ROUNDS; version++) {
                        chart.save(Section.SITES, version, World.json("{\"sites\":{\"n\":" + version + "}}"))
                                .orThrow();
                    }
                    return chart.section(Section.SITES).version();
                });
            }
            assertThat(atOnce(work)).hasSize(8).containsOnly((long) ROUNDS);
            assertThat(world.records.trail().verify().breaks()).isEmpty();
        }
    }

    private static <T> List<T> atOnce(List<Callable<T>> work) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(work.size());
        try {
            var start = new CyclicBarrier(work.size());
            var running = new ArrayList<Future<T>>();
            for (Callable<T> one : work) {
                running.add(threads.submit(() -> {
                    start.await();
                    return one.call();
                }));
            }
            var done = new ArrayList<T>();
            for (Future<T> one : running) {
                done.add(one.get());
            }
            return done;
        } finally {
            threads.shutdownNow();
        }
    }
}
