package slipway.benchmarks.load;

import java.lang.management.ManagementFactory;
import java.sql.Connection;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.locks.ReentrantLock;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.chart.Chart;
import slipway.care.record.person.PersonDetails;
import slipway.mechanics.body.Side;
import slipway.store.Store;
import tools.jackson.databind.json.JsonMapper;

/**
 * How fast the store keeps check-ins against plain durable inserts of the same rows into the same tables, in one run:
 * by one caller, by many callers together, and by as many who must not share a commit; and how long the query of Today
 * takes beside them. Prints one CSV row.
 * Arguments: sqlite or postgres, check-ins of each kind, callers, check-ins stored before.
 */
public final class CheckInRates {
    private static final int PEOPLE = 64;
    private static final int ROUNDS = 300;
    private static final String WORDS = "x".repeat(120);

    private final List<Chart> charts = new ArrayList<>();
    private final Act act = new Act("benchmark", Role.PROGRAM, "bench", Instant.now());
    private int made;

    private CheckInRates() {}

    /** Runs and prints. */
    public static void main(String[] args) throws Exception {
        int count = Integer.parseInt(args[1]);
        int callers = Integer.parseInt(args[2]);
        long stored = Long.parseLong(args[3]);
        try (Places place = Places.of(args[0]);
                Store store = Store.open(place.settings())) {
            var rates = new CheckInRates();
            rates.people(store.records());
            Filler.fill(store, rates.charts.get(0).episode().id(), stored);
            rates.run(count / 4, 1, false);
            double one = rates.run(count, 1, false);
            double raw;
            try (Connection connection = store.writing().getConnection()) {
                raw = count / new Rows(connection, count).putBack();
            }
            double together = rates.run(count, callers, false);
            double apart = rates.run(count, callers, true);
            double today = rates.todayMillis(store.records());
            System.out.printf(
                    Locale.ROOT,
                    "%s,%d,%d,%.0f,%.0f,%.0f,%.0f,%.2f,%.1f%n",
                    args[0],
                    stored,
                    callers,
                    raw,
                    one,
                    apart,
                    together,
                    today,
                    ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        }
    }

    private void people(Records records) {
        records.clinics().add("Benchmark", "therapy", "", "112", true, act);
        for (int i = 0; i < PEOPLE; i++) {
            var details = PersonDetails.invented("Bench " + i);
            String person = records.people().add(details, act).id();
            charts.add(records.charts().begin(person, Side.LEFT, "benchmark", Map.of(), act));
        }
    }

    /** Median. */
    private double todayMillis(Records records) {
        var times = new double[ROUNDS];
        for (int i = -ROUNDS; i < ROUNDS; i++) {
            long begin = System.nanoTime();
            records.caseload().today("benchmark", PEOPLE, act);
            if (i >= 0) {
                times[i] = (System.nanoTime() - begin) / 1e6;
            }
        }
        Arrays.sort(times);
        return times[ROUNDS / 2];
    }

    /** Check-ins a second. With {@code apart} each has its commit for itself, as without writing together. */
    private double run(int count, int callers, boolean apart) throws Exception {
        int first = made;
        made += count;
        var turn = new ReentrantLock();
        ExecutorService threads = Executors.newFixedThreadPool(callers);
        long begin = System.nanoTime();
        var work = new ArrayList<Future<?>>();
        for (int caller = 0; caller < callers; caller++) {
            int offset = caller;
            work.add(threads.submit(() -> {
                for (int i = first + offset; i < first + count; i += callers) {
                    if (apart) {
                        turn.lock();
                    }
                    try {
                        send(i);
                    } finally {
                        if (apart) {
                            turn.unlock();
                        }
                    }
                }
            }));
        }
        for (Future<?> each : work) {
            each.get();
        }
        threads.shutdown();
        return count / ((System.nanoTime() - begin) / 1e9);
    }

    private void send(int i) {
        String id = "check-in-%08d".formatted(i);
        charts.get(i % PEOPLE)
                .checkIns()
                .add(
                        id,
                        id,
                        "some-glide",
                        JsonMapper.shared().createObjectNode().put("words", WORDS));
    }
}
