package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.store.work.SharedWork;
import slipway.store.work.Task;
import slipway.store.work.Turn;
import slipway.store.work.Turns;
import slipway.store.work.WorkNote;
import slipway.store.work.Worker;

/** Two servers on one database: two stores with their own connections. */
class SharedWorkTest {
    private static final Duration HOLD = Duration.ofMinutes(3);
    /** A turn that stays the newest for longer than any test. */
    private static final Turns ONCE = now -> Instant.parse("2026-03-02T02:00:00Z");

    private static final long YEAR_US = Duration.ofDays(365).toSeconds() * 1_000_000;

    @ParameterizedTest
    @EnumSource
    void ofManyWhoComeAtOnceOneDoesTheTurn(Databases kind) throws Exception {
        try (Databases.Fresh database = kind.fresh();
                Store one = Store.open(database.settings());
                Store other = Store.open(database.settings())) {
            var takings = new ArrayList<Callable<Optional<Turn>>>();
            for (int i = 0; i < 20; i++) {
                SharedWork shared = (i % 2 == 0 ? one : other).work();
                String name = "work-" + i / 10;
                takings.add(() -> shared.take(name, ONCE, "server", HOLD));
            }
            List<Turn> taken = all(takings);
            assertThat(taken).extracting(Turn::name).containsExactlyInAnyOrder("work-0", "work-1");
            assertThat(one.work().done(taken.get(0), "")).isTrue();
            assertThat(other.work().take(taken.get(0).name(), ONCE, "other", HOLD))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whoDiesIsFollowedByAnotherAndHasNoSayAnyMore(Databases kind) {
        try (Databases.Fresh database = kind.fresh();
                Store one = Store.open(database.settings());
                Store other = Store.open(database.settings())) {
            Turn dead = one.work().take("work", ONCE, "one", HOLD).orElseThrow();
            assertThat(other.work().take("work", ONCE, "other", HOLD)).isEmpty();
            // As if its minutes were over.
            database.run("update shared_work set held_until_us = 1");
            Turn next = other.work().take("work", ONCE, "other", HOLD).orElseThrow();
            assertThat(next.due()).isEqualTo(dead.due());
            assertThat(one.work().extend(dead, HOLD)).isFalse();
            assertThat(one.work().done(dead, "late")).isFalse();
            assertThat(one.work().failed(dead, "late", HOLD)).isZero();
            assertThat(other.work().extend(next, HOLD)).isTrue();
            assertThat(other.work().done(next, "well")).isTrue();
            assertThat(one.work().note("work").map(WorkNote::words)).contains("well");
        }
    }

    @ParameterizedTest
    @EnumSource
    void aClockThatLeaptAheadAndBackStopsNothing(Databases kind) {
        try (Databases.Fresh database = kind.fresh();
                Store store = Store.open(database.settings())) {
            SharedWork shared = store.work();
            Turns now = Turns.every(Duration.ofMillis(1));
            shared.done(shared.take("work", now, "server", HOLD).orElseThrow(), "");
            database.run("update shared_work set turn_us = turn_us + " + YEAR_US);
            Turn turn = shared.take("work", now, "server", HOLD).orElseThrow();
            database.run("update shared_work set held_until_us = held_until_us + " + YEAR_US);
            assertThat(shared.take("work", now, "server", HOLD)).isPresent();
            assertThat(shared.done(turn, "")).isFalse();
        }
    }

    @ParameterizedTest
    @EnumSource
    void aFailureIsKeptAndTriedAgainAfterAWhile(Databases kind) {
        try (Databases.Fresh database = kind.fresh();
                Store store = Store.open(database.settings())) {
            var runs = new AtomicInteger();
            var task = new Task("backup", ONCE, Duration.ofMinutes(10), () -> {
                if (runs.incrementAndGet() < 3) {
                    throw new IOException("/backup: no space left");
                }
                return "a file";
            });
            var secretive = new Task("other", ONCE, Duration.ofMinutes(10), () -> {
                throw new IllegalStateException("Ines Palo");
            });
            try (var worker = new Worker(store.work(), "server", List.of(task, secretive))) {
                assertThat(worker.round()).isZero();
                assertThat(worker.round()).isZero();
                assertThat(runs).hasValue(1);
                database.run("update shared_work set held_until_us = 1");
                worker.round();
                WorkNote note = store.work().note("backup").orElseThrow();
                assertThat(note.failures()).isEqualTo(2);
                assertThat(note.words()).contains("no space left");
                assertThat(note.succeededAt()).isEmpty();
                assertThat(store.work().note("other").map(WorkNote::words)).contains("IllegalStateException");
                database.run("update shared_work set held_until_us = 1");
                assertThat(worker.round()).isEqualTo(1);
                assertThat(store.work().note("backup").orElseThrow().failures()).isZero();
                assertThat(store.work().note("backup").orElseThrow().succeededAt())
                        .isPresent();
            }
        }
    }

    @Test
    void turnsAreThoseOfThePlaceThroughTheChangeOfItsClocks() {
        Turns nightly = Turns.daily(LocalTime.of(2, 30), ZoneId.of("Europe/Berlin"));
        // Summer time of 2026 begins on 29 March at 02:00, which becomes 03:00: that night 02:30 is 03:30.
        assertThat(nightly.newestAt(Instant.parse("2026-03-29T01:29:59Z"))).isEqualTo("2026-03-28T01:30:00Z");
        assertThat(nightly.newestAt(Instant.parse("2026-03-29T01:30:00Z"))).isEqualTo("2026-03-29T01:30:00Z");
        assertThat(nightly.newestAt(Instant.parse("2026-03-30T00:29:59Z"))).isEqualTo("2026-03-29T01:30:00Z");
        assertThat(nightly.newestAt(Instant.parse("2026-03-30T00:30:00Z"))).isEqualTo("2026-03-30T00:30:00Z");
        assertThat(Turns.every(Duration.ofMinutes(10)).newestAt(Instant.parse("2026-03-30T00:39:59Z")))
                .isEqualTo("2026-03-30T00:30:00Z");
    }

    private static List<Turn> all(List<Callable<Optional<Turn>>> takings) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            var taken = new ArrayList<Turn>();
            for (Future<Optional<Turn>> one : threads.invokeAll(takings)) {
                one.get().ifPresent(taken::add);
            }
            return taken;
        } finally {
            threads.shutdownNow();
        }
    }
}
