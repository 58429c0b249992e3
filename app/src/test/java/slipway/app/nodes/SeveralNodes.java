package slipway.app.nodes;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import slipway.app.records.BackupFolder;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.web.WebOptions;
import slipway.web.WebServer;
import slipway.web.demo.DemoClinic;

/**
 * Two {@code serve} processes on one PostgreSQL that writes to the disk; one is killed while people send reports to both.
 * Prints what it looked at, and ends with 1 if anything is not as it must be. Arguments: folder to work in, people,
 * perhaps the class path of an older program for the first server.
 */
final class SeveralNodes {
    /** Confirmed reports before the kill and after it, for each person; on a busy machine that takes a while. */
    private static final int REPORTS_EACH = 4;

    private static final int PATIENCE_SECONDS = 240;

    private final Path folder;
    private final String database;
    private boolean well = true;

    private SeveralNodes(Path folder, String database) {
        this.folder = folder;
        this.database = database;
    }

    public static void main(String[] args) throws Exception {
        Path folder = Files.createDirectories(Path.of(args[0]));
        try (EmbeddedPostgres postgres = EmbeddedPostgres.builder()
                .setOverrideWorkingDirectory(folder.toFile())
                .setServerConfig("fsync", "on")
                .setServerConfig("full_page_writes", "on")
                .setServerConfig("synchronous_commit", "on")
                .start()) {
            String url = postgres.getJdbcUrl("postgres", "postgres").split("\\?", 2)[0];
            String first = args.length > 2 ? args[2] : System.getProperty("java.class.path");
            var run = new SeveralNodes(folder, url);
            run.run(Integer.parseInt(args[1]), first);
            System.exit(run.well ? 0 : 1);
        }
    }

    private StoreSettings settings() {
        return StoreSettings.postgres(database, "postgres", "postgres");
    }

    private void run(int count, String firstProgram) throws Exception {
        Path key = folder.resolve("backup.key");
        var random = new byte[32];
        new SecureRandom().nextBytes(random);
        Files.write(key, random);
        Files.createDirectories(folder.resolve("backups"));
        String program = System.getProperty("java.class.path");
        // The first is there before the program of the others touches the tables, as when servers are changed in turn.
        try (ServerProcess one =
                new ServerProcess(folder, "one", firstProgram, database, firstProgram.equals(program))) {
            one.awaitReady();
            List<People.AtHome> people = fill(count);
            try (ServerProcess other = new ServerProcess(folder, "other", program, database, true)) {
                other.awaitReady();
                underLoad(people, one, other);
            }
        }
    }

    private List<People.AtHome> fill(int count) {
        try (Store store = Store.open(settings())) {
            var options = new WebOptions(0, "127.0.0.1", folder, Optional.of(database), Optional.empty(), true);
            try (WebServer server = WebServer.start(options, store, Clock.systemUTC(), Map.of())) {
                server.part(DemoClinic.class).fill();
                return new People(store.records()).make(server.part(DemoClinic.class), count);
            }
        }
    }

    private void underLoad(List<People.AtHome> people, ServerProcess one, ServerProcess other) throws Exception {
        var staff = new Browser();
        staff.signIn(one.address(), "therapist", Objects.requireNonNull(DemoClinic.SIGN_INS.get("therapist")));
        say("a sign-in on one server holds on the other", status(staff, other) == 200);
        List<Reporter> reporters = new ArrayList<>();
        for (People.AtHome person : people) {
            reporters.add(new Reporter(person, one.address(), other.address()));
        }
        reporters.forEach(Thread::start);
        await(reporters, REPORTS_EACH * people.size());
        int before = confirmed(reporters);
        one.kill();
        await(reporters, before + REPORTS_EACH * people.size());
        reporters.forEach(Reporter::enough);
        for (Reporter reporter : reporters) {
            reporter.join();
        }
        int after = confirmed(reporters) - before;
        say(
                "reports were confirmed before the kill (%d) and after it (%d)".formatted(before, after),
                before * after > 0);
        int again =
                reporters.stream().mapToInt(reporter -> reporter.again.get()).sum();
        System.out.printf("      %d were sent again because no answer had come%n", again);
        say("the sign-in survives the kill", status(staff, other) == 200);
        lookAtTheRecords(reporters);
        lookAtTheWork();
    }

    private static void await(List<Reporter> reporters, int count) throws InterruptedException {
        for (int i = 0; i < PATIENCE_SECONDS * 10 && confirmed(reporters) < count; i++) {
            TimeUnit.MILLISECONDS.sleep(100);
        }
    }

    private static int confirmed(List<Reporter> reporters) {
        return reporters.stream()
                .mapToInt(reporter -> reporter.confirmed.size())
                .sum();
    }

    private static int status(Browser browser, ServerProcess server) throws IOException, InterruptedException {
        return browser.get(server.address(), "/today").statusCode();
    }

    private void lookAtTheRecords(List<Reporter> reporters) {
        try (Store store = Store.open(settings())) {
            var people = new People(store.records());
            int lost = 0;
            int twice = 0;
            for (Reporter reporter : reporters) {
                List<String> kept = people.reports(reporter.person);
                lost += (int) reporter.confirmed.stream()
                        .filter(id -> !kept.contains(id))
                        .count();
                twice += kept.size() - Set.copyOf(kept).size();
            }
            say("confirmed and lost: " + lost, lost == 0);
            say("kept twice: " + twice, twice == 0);
            var trail = store.records().trail().verify();
            say(
                    "entries in the trail: %d, breaks: %d"
                            .formatted(trail.entries(), trail.breaks().size()),
                    trail.isIntact());
        }
    }

    /** Both servers wanted a backup at their start; the alerts are looked at every minute, also after the kill. */
    private void lookAtTheWork() throws Exception {
        List<Path> backups = new BackupFolder(folder.resolve("backups")).list();
        say("backups that two servers made of one night: " + backups.size(), backups.size() == 1);
        try (Store store = Store.open(settings())) {
            var seen = store.work().note("alerts").flatMap(note -> note.succeededAt());
            boolean goesOn = false;
            for (int i = 0; i < 100 && !goesOn; i++) {
                TimeUnit.SECONDS.sleep(1);
                goesOn = !store.work()
                        .note("alerts")
                        .flatMap(note -> note.succeededAt())
                        .equals(seen);
            }
            say("work on a schedule goes on after the kill", goesOn);
            Map<String, Integer> failures = new HashMap<>();
            store.work().notes().forEach(note -> failures.put(note.name(), note.failures()));
            say("failures of that work: " + failures, failures.values().stream().allMatch(number -> number == 0));
        }
        for (String server : List.of("one", "other")) {
            Set<String> faults = Files.readAllLines(folder.resolve(server + ".log")).stream()
                    .filter(line -> line.contains("ERROR") || line.contains("WARN"))
                    .collect(Collectors.toCollection(TreeSet::new));
            say(
                    "faults in the log of %s: %d%n%s"
                            .formatted(server, faults.size(), String.join("\n", faults))
                            .strip(),
                    faults.isEmpty());
        }
    }

    private void say(String what, boolean right) {
        System.out.printf("%s %s%n", right ? "ok   " : "FAIL ", what);
        well &= right;
    }
}
