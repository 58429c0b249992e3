package slipway.store.faults;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.follow.CheckIn;
import slipway.care.record.trail.TrailReport;
import slipway.store.Store;
import tools.jackson.databind.JsonNode;

/** One round: start, kill, look. */
final class KillRound {
    /** Entries in the trail of the first version's records. */
    private static final int FIRST_VERSION_ENTRIES = 17;

    private static final int MOST_MS = 500;
    /** A migration is over soon. */
    private static final int MOST_MS_MIGRATION = 150;

    private final KillTarget target;
    private final int round;
    private final Random random;
    private final List<String> said = new ArrayList<>();
    private final CountDownLatch ready = new CountDownLatch(1);

    private final KillTask task;

    KillRound(KillTarget target, int round, Random random, KillTask task) {
        this.target = target;
        this.round = round;
        this.random = random;
        this.task = task;
    }

    /**
     * What was found.
     *
     * @param confirmed how much the writer had been told is kept, in this round
     * @param lost how much of what was ever confirmed in this database is not there
     * @param wrong how much of it is there with another content
     * @param tablesVersion how far the tables were when the kill had come, before they were brought up to date
     */
    record Result(
            KillTask task,
            int killedAfterMs,
            boolean serverKilled,
            int confirmed,
            int lost,
            int wrong,
            String integrity,
            int trailBreaks,
            int tablesVersion) {
        boolean isWhole() {
            return lost == 0 && wrong == 0 && integrity.equals("ok") && trailBreaks == 0;
        }

        String csv() {
            return "%s,%d,%b,%d,%d,%d,%s,%d,%d"
                    .formatted(
                            task,
                            killedAfterMs,
                            serverKilled,
                            confirmed,
                            lost,
                            wrong,
                            integrity,
                            trailBreaks,
                            tablesVersion);
        }
    }

    Result run() throws IOException, InterruptedException, SQLException {
        if (task == KillTask.MIGRATION) {
            target.freshFirstVersion();
        }
        boolean serverToo = target.server().isPresent() && random.nextInt(3) == 0;
        int killAfterMs = random.nextInt(task == KillTask.MIGRATION ? MOST_MS_MIGRATION : MOST_MS);
        kill(killAfterMs, serverToo);
        List<String> confirmed = said.stream()
                .filter(line -> !line.equals("ready") && !line.equals("migrated"))
                .toList();
        target.confirmed.addAll(confirmed);
        String integrity = target.integrity(task);
        int tables = target.tablesVersion(task);
        try (Store store = Store.open(target.settings(task))) {
            TrailReport trail = store.records().trail().verify();
            Look look = task == KillTask.MIGRATION ? firstVersion(trail) : look(store);
            return new Result(
                    task,
                    killAfterMs,
                    serverToo,
                    confirmed.size(),
                    look.lost,
                    look.wrong,
                    integrity,
                    trail.breaks().size(),
                    tables);
        }
    }

    private void kill(int afterMs, boolean serverToo) throws IOException, InterruptedException {
        Process writer = start();
        var listener = new Thread(() -> listen(writer));
        listener.start();
        if (!ready.await(1, TimeUnit.MINUTES)) {
            throw new IllegalStateException("the writer did not start: " + said);
        }
        if (writer.waitFor(afterMs, TimeUnit.MILLISECONDS)) {
            throw new IllegalStateException("the writer ended before it was killed: " + said);
        }
        if (serverToo) {
            target.server().orElseThrow().killAndStart();
        }
        writer.destroyForcibly().waitFor();
        listener.join();
    }

    private Process start() throws IOException {
        var settings = target.settings(task);
        var command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                KillWriter.class.getName(),
                settings.url(),
                settings.user(),
                task.name(),
                Integer.toString(round)));
        List<String> episodes = target.episodes();
        command.addAll(task == KillTask.SAVES ? episodes.subList(0, 2) : episodes);
        var builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("KILL_PASSWORD", settings.password());
        return builder.start();
    }

    /** Reads what the writer says up to its end; a last line without an end was not said. */
    private void listen(Process writer) {
        try (BufferedReader in = writer.inputReader(StandardCharsets.UTF_8)) {
            var line = new StringBuilder();
            for (int letter = in.read(); letter >= 0; letter = in.read()) {
                if (letter != '\n') {
                    line.append((char) letter);
                    continue;
                }
                said.add(line.toString());
                line.setLength(0);
                ready.countDown();
            }
        } catch (IOException e) {
            // The pipe broke with the process; what came through counts.
            said.add("ready");
        }
    }

    private record Look(int lost, int wrong) {}

    private static Look firstVersion(TrailReport trail) {
        return new Look(trail.entries() == FIRST_VERSION_ENTRIES ? 0 : 1, 0);
    }

    private Look look(Store store) {
        Map<String, Integer> there = there(store);
        int lost = 0;
        int wrong = 0;
        for (String line : target.confirmed) {
            int cut = line.lastIndexOf(' ');
            Integer found = there.get(line.substring(0, cut));
            if (found == null) {
                lost++;
            } else if (found != Integer.parseInt(line.substring(cut + 1))) {
                wrong++;
            }
        }
        return new Look(lost, wrong);
    }

    /** Everything in the database, in the words of the writer. */
    private Map<String, Integer> there(Store store) {
        var there = new HashMap<String, Integer>();
        for (String episode : target.episodes()) {
            Chart chart = KillWriter.chart(store, episode);
            for (CheckIn checkIn : chart.checkIns().list()) {
                there.put("check-in %s %s".formatted(episode, checkIn.id()), n(checkIn.body()));
            }
            chart.plans()
                    .list()
                    .forEach(plan -> there.put(
                            "plan %s %d".formatted(episode, plan.number()),
                            n(plan.plan().body())));
            long newest = chart.section(Section.SITES).version();
            for (long version = 1; version <= newest; version++) {
                long at = version;
                chart.earlier(Section.SITES, version)
                        .ifPresent(section -> there.put(
                                "section %s %d".formatted(episode, at),
                                n(section.content().path("sites"))));
            }
        }
        return there;
    }

    private static int n(JsonNode node) {
        return node.path("n").intValue();
    }
}
