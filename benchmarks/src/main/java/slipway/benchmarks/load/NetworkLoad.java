package slipway.benchmarks.load;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slipway.store.Store;
import slipway.web.WebOptions;
import slipway.web.WebServer;

/**
 * The morning of a network, when its therapists look through their people, and its evening, when the people report; each
 * against a server in a process of its own, with as many at once as asked for, none of whom waits between two pages.
 * Arguments: sqlite or postgres, people, therapists, at once, seconds of each half, check-ins stored before.
 */
public final class NetworkLoad {
    private static final Pattern EPISODE = Pattern.compile("/episodes/([0-9a-f-]{36})");

    private final Times times = new Times();
    private final Set<String> seen = ConcurrentHashMap.newKeySet();
    private final String address;

    NetworkLoad(String address) {
        this.address = address;
    }

    int count() {
        return times.count();
    }

    int wrong() {
        return times.wrong();
    }

    /** Runs and prints CSV rows. */
    public static void main(String[] args) throws Exception {
        int people = Integer.parseInt(args[1]);
        int therapists = Integer.parseInt(args[2]);
        int atOnce = Integer.parseInt(args[3]);
        int seconds = Integer.parseInt(args[4]);
        try (Places place = Places.of(args[0])) {
            List<String> codes = fill(place, people, therapists, Long.parseLong(args[5]));
            try (var server = new Measured(place, System.getProperty("bench.heap", "512m"))) {
                String label = String.join(",", List.of(args));
                half("morning", label, server, load -> load.morning(therapists, atOnce, seconds));
                half("evening", label, server, load -> load.evening(codes, atOnce, seconds));
            }
        }
    }

    static List<String> fill(Places place, int people, int therapists, long stored) throws Exception {
        try (Store store = Store.open(place.settings())) {
            var options = new WebOptions(0, "127.0.0.1", place.folder(), Optional.empty(), Optional.empty(), false);
            try (WebServer server = WebServer.start(options, store, Clock.systemUTC(), Map.of())) {
                var crowd = new Crowd(store.records(), server);
                List<String> codes = crowd.make(people, therapists);
                Filler.fill(store, crowd.firstEpisode(), stored);
                return codes;
            }
        }
    }

    /** Half a day. */
    private interface Half {
        void run(NetworkLoad load) throws IOException, InterruptedException;
    }

    private static void half(String name, String label, Measured server, Half half)
            throws IOException, InterruptedException {
        var load = new NetworkLoad(server.address);
        double before = server.processorSeconds();
        long begin = System.nanoTime();
        half.run(load);
        double took = (System.nanoTime() - begin) / 1e9;
        double busy = server.processorSeconds() - before;
        System.out.printf(
                Locale.ROOT,
                "%s,%s,all,%d,%d,%.1f pages/s,%.0f ms of processor a page,%d MiB,%.1f load%n",
                name,
                label,
                load.times.count(),
                load.times.wrong(),
                load.times.count() / took,
                1000 * busy / load.times.count(),
                server.peakMib(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        load.times.rows().forEach(row -> System.out.println(name + "," + label + "," + row));
    }

    /** Each therapist signs in and goes through Today, an episode, its course and the list of people, again and again. */
    void morning(int therapists, int atOnce, int seconds) throws InterruptedException {
        var next = new AtomicInteger();
        long end = System.nanoTime() + seconds * 1_000_000_000L;
        all(atOnce, () -> {
            while (System.nanoTime() < end) {
                int number = next.getAndIncrement();
                var caller = new Caller(address, times);
                caller.get("sign-in page", "/sign-in");
                caller.post(
                        "sign in",
                        "/sign-in",
                        302,
                        "login",
                        Crowd.login(number % therapists),
                        "password",
                        Crowd.PASSWORD);
                Matcher episodes = EPISODE.matcher(caller.get("Today", "/today"));
                for (int seen = 0; seen < 5 && episodes.find() && System.nanoTime() < end; seen++) {
                    String id = episodes.group(1);
                    caller.get(kind("Follow", id), "/episodes/" + id + "/follow");
                    caller.get("History", "/episodes/" + id + "/history");
                }
                caller.get("People", "/people");
            }
        });
    }

    /** Each person comes by the code, reads the page and sends one report; then the next person does. */
    void evening(List<String> codes, int atOnce, int seconds) throws InterruptedException {
        var waiting = new ConcurrentLinkedQueue<>(codes);
        long end = System.nanoTime() + seconds * 1_000_000_000L;
        all(atOnce, () -> {
            while (System.nanoTime() < end) {
                Optional<String> code = Optional.ofNullable(waiting.poll());
                if (code.isEmpty()) {
                    return;
                }
                report(code.get());
                waiting.add(code.get());
            }
        });
    }

    private void report(String code) throws IOException, InterruptedException {
        var caller = new Caller(address, times);
        caller.get("code", "/p/" + code);
        caller.post("entering", "/p/" + code, 302);
        String home = caller.get(kind("home", code), "/home");
        String exercise = home.replaceAll("(?s).*(?:<option|name=\"exercise\") value=\"([^\"]+)\".*", "$1");
        String id = UUID.randomUUID().toString();
        caller.post(
                "report",
                "/home/report",
                200,
                "id",
                id,
                "exercise",
                exercise,
                "done",
                "all",
                "planned",
                "6",
                "before",
                "2",
                "worst",
                "2",
                "kind",
                "tingling",
                "settle",
                "2",
                "none",
                "yes");
    }

    /** The first page of a plan has the plan computed; told apart, since the next ones find it in memory. */
    private String kind(String page, String whose) {
        return seen.add(page + whose) ? page + " (first)" : page;
    }

    /** What one of many does. */
    private interface Work {
        void run() throws IOException, InterruptedException;
    }

    private void all(int atOnce, Work work) throws InterruptedException {
        var threads = new ArrayList<Thread>();
        for (int i = 0; i < atOnce; i++) {
            threads.add(new Thread(() -> {
                try {
                    work.run();
                } catch (IOException e) {
                    times.add("no answer", 0, false);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
            }));
        }
        threads.forEach(Thread::start);
        for (Thread thread : threads) {
            thread.join();
        }
    }
}
