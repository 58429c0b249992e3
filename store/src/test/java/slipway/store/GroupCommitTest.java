package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.chart.Chart;
import slipway.care.record.follow.CheckIn;
import slipway.care.record.follow.Receipt;

/** Many who write at once, some of whom are refused: the others' writing must not suffer. */
class GroupCommitTest {
    private static final int WRITERS = 400;

    @ParameterizedTest
    @EnumSource
    void whoIsRefusedTakesNobodyAlong(Databases kind) throws Exception {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Chart chart = world.chart(world.person("Ines Palo", act), act);
            var kept = new ArrayList<String>();
            var work = new ArrayList<Callable<String>>();
            for (int i = 0; i < WRITERS; i++) {
                String id = "check-in-%04d".formatted(i);
                if (i % 3 == 0) {
                    work.add(() -> refused(chart, id));
                } else if (i % 7 == 0) {
                    // Text that neither database may keep.
                    work.add(() -> badText(chart, id));
                } else {
                    kept.add(id);
                    work.add(() -> taken(chart, id));
                }
            }
            assertThat(run(work)).doesNotContain("wrong").hasSize(WRITERS);
            assertThat(chart.checkIns().list()).extracting(CheckIn::id).containsExactlyInAnyOrderElementsOf(kept);
            assertThat(chart.visits().list()).isEmpty();
            assertThat(world.records.trail().verify().breaks()).isEmpty();
        }
    }

    private static String taken(Chart chart, String id) {
        Receipt receipt = chart.checkIns().add(id, "session", "some-glide", World.json("{\"worst\":1}"));
        return receipt instanceof Receipt.Taken ? "taken" : "wrong";
    }

    private static String refused(Chart chart, String id) {
        try {
            chart.visits().end(id, 1);
            return "wrong";
        } catch (NotThere e) {
            return "refused";
        }
    }

    private static String badText(Chart chart, String id) {
        try {
            chart.checkIns().add(id, "session\0", "some-glide", World.json("{}"));
            return "wrong";
        } catch (RuntimeException e) {
            return "refused";
        }
    }

    private static java.util.List<String> run(java.util.List<Callable<String>> work) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(64);
        try {
            var done = new ArrayList<String>();
            for (Future<String> one : threads.invokeAll(work)) {
                done.add(one.get());
            }
            return done;
        } finally {
            threads.shutdownNow();
        }
    }
}
