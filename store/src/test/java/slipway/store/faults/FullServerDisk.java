package slipway.store.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Collections;
import java.util.HashSet;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import slipway.care.record.chart.Chart;
import slipway.care.record.follow.CheckIn;
import slipway.care.record.person.PersonDetails;
import slipway.mechanics.body.Side;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.store.db.StoreFailure;
import tools.jackson.databind.json.JsonMapper;

/**
 * Fills the disk of a PostgreSQL server while many write, makes room, and looks. Arguments: a folder whose {@code disk}
 * is a small file system, and the room in kB that is left when the writing begins.
 */
final class FullServerDisk {
    private static final int WRITERS = 16;
    private static final int PATIENCE_SECONDS = 60;
    private static final int LETTERS = 5_000;

    private final Path disk;
    private final KillServer server;
    private final Set<String> confirmed = Collections.synchronizedSet(new HashSet<>());
    private final Set<String> refused = Collections.synchronizedSet(new HashSet<>());
    private final AtomicInteger faults = new AtomicInteger();
    private boolean well = true;

    private FullServerDisk(Path disk) throws IOException {
        this.disk = disk;
        this.server = new KillServer(disk);
    }

    public static void main(String[] args) throws Exception {
        var run = new FullServerDisk(Path.of(args[0]).resolve("disk"));
        try {
            run.run(Integer.parseInt(args[1]));
        } finally {
            Files.deleteIfExists(run.filler());
            run.server.close();
        }
        System.exit(run.well ? 0 : 1);
    }

    private Path filler() {
        return disk.resolve("filler");
    }

    private void run(int roomKb) throws Exception {
        try (Store store = Store.open(settings())) {
            Chart chart = chart(store);
            for (int i = 0; i < WRITERS; i++) {
                send(chart, "before-%d".formatted(i));
            }
            fill(roomKb);
            writeTogether(chart);
            say("confirmed %d, refused %d".formatted(confirmed.size(), refused.size()), !refused.isEmpty());
            say("refused with a fault of the program: " + faults, faults.get() == 0);
            boolean alive = answers();
            System.out.printf("      the server %s while its disk is full%n", alive ? "answers" : "does not answer");
            Files.delete(filler());
            if (!alive && !answersSoon()) {
                System.out.println("      with room again it does not come back by itself; it is started");
                server.start();
            }
            look(store, chart);
            server.killAndStart();
            look(store, chart);
        }
    }

    private StoreSettings settings() {
        return StoreSettings.postgres(server.url("postgres"), "postgres", "x");
    }

    private static Chart chart(Store store) {
        var records = store.records();
        records.clinics().add("Harbour Street", "therapy", "", "112", true, KillWriter.ACT);
        String person = records.people()
                .add(PersonDetails.invented("Invented Person"), KillWriter.ACT)
                .id();
        return records.charts().begin(person, Side.LEFT, "import", Map.of(), KillWriter.ACT);
    }

    private void fill(int roomKb) throws IOException {
        var block = new byte[1024];
        try (var out = Files.newOutputStream(filler())) {
            while (Files.getFileStore(disk).getUsableSpace() > roomKb * 1024L) {
                out.write(block);
            }
        }
    }

    private void writeTogether(Chart chart) throws InterruptedException {
        ExecutorService threads = Executors.newFixedThreadPool(WRITERS);
        for (int i = 0; i < 4_000; i++) {
            String id = "full-%04d".formatted(i);
            threads.execute(() -> {
                if (refused.size() < 48) {
                    send(chart, id);
                }
            });
        }
        threads.shutdown();
        if (!threads.awaitTermination(5, TimeUnit.MINUTES)) {
            say("writers hang", false);
        }
    }

    private void send(Chart chart, String id) {
        try {
            chart.checkIns()
                    .add(
                            id,
                            "session",
                            "some-glide",
                            JsonMapper.shared().createObjectNode().put("words", words(id)));
            confirmed.add(id);
        } catch (StoreFailure e) {
            refused.add(id);
            if (!e.isAway()) {
                faults.incrementAndGet();
                System.out.println("      " + e.getMessage());
            }
        }
    }

    /** Differs from one to the next and does not pack well, so that the server cannot make it small. */
    private static String words(String id) {
        return new Random(id.hashCode())
                .ints(LETTERS, 'a', 'z' + 1)
                .mapToObj(letter -> String.valueOf((char) letter))
                .collect(Collectors.joining());
    }

    private boolean answers() {
        try (var connection = DriverManager.getConnection(server.url("postgres"), "postgres", "x")) {
            return connection.isValid(1);
        } catch (SQLException e) {
            return false;
        }
    }

    private boolean answersSoon() throws InterruptedException {
        boolean there = false;
        for (int i = 0; i < PATIENCE_SECONDS / 3 && !there; i++) {
            TimeUnit.SECONDS.sleep(1);
            there = answers();
        }
        return there;
    }

    /** The same store goes on, without a restart of the program. */
    private void look(Store store, Chart chart) {
        int before = refused.size();
        int kept = confirmed.size();
        for (int i = 0; i < PATIENCE_SECONDS && confirmed.size() == kept; i++) {
            send(chart, "after-%d-%d".formatted(kept, i));
        }
        say("writing works, after %d more refusals".formatted(refused.size() - before), confirmed.size() > kept);
        Set<String> there = chart.checkIns().list().stream().map(CheckIn::id).collect(Collectors.toSet());
        Set<String> lost = new HashSet<>(confirmed);
        lost.removeAll(there);
        say("confirmed and lost: " + lost.size(), lost.isEmpty());
        there.removeAll(confirmed);
        System.out.printf("      refused and there all the same: %d%n", there.size());
        say("breaks in the trail", store.records().trail().verify().isIntact());
    }

    private void say(String what, boolean right) {
        System.out.printf("%s %s%n", right ? "ok   " : "FAIL ", what);
        well &= right;
    }
}
