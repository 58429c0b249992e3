package slipway.store.faults;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jooq.SQLDialect;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanDraft;
import slipway.care.record.chart.ResultInputs;
import slipway.care.record.chart.Stamp;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.store.db.Migrations;
import slipway.store.db.Pools;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The process that is killed. It prints one line for everything that the store has confirmed, after it was confirmed;
 * the password of the database comes from the environment.
 */
final class KillWriter {
    static final Act ACT = new Act("import", Role.PROGRAM, "harbour", Instant.parse("2026-03-02T12:00:00Z"));

    /** About as long as a real plan. */
    private static final String FILLER = "x".repeat(20_000);

    private KillWriter() {}

    /** Arguments: URL, user, task, number of the round, ids of episodes. */
    public static void main(String[] args) throws IOException {
        KillTask task = KillTask.valueOf(args[2]);
        String password = Objects.requireNonNull(System.getenv("KILL_PASSWORD"));
        var settings = new StoreSettings(args[0], args[1], password, 4, 4);
        if (task == KillTask.MIGRATION) {
            migrate(settings);
        } else {
            Store store = Store.open(settings);
            for (String episode : List.of(args).subList(4, args.length)) {
                Chart chart = chart(store, episode);
                new Thread(() -> write(task, chart, args[3])).start();
            }
        }
        // Lives until it is killed, or until whoever would kill it is gone.
        int end = System.in.read();
        System.exit(end < 0 ? 0 : 1);
    }

    /** Everything is loaded and open before the migration that the kill is to meet. */
    private static void migrate(StoreSettings settings) {
        boolean sqlite = settings.url().startsWith("jdbc:sqlite:");
        SQLDialect dialect = sqlite ? SQLDialect.SQLITE : SQLDialect.POSTGRES;
        Pools pools = sqlite
                ? Pools.sqlite(settings.url(), 1)
                : Pools.postgres(settings.url(), settings.user(), settings.password(), 2, 1);
        Migrations.runUpTo("1", pools.writing(), dialect);
        say("ready");
        Migrations.run(pools.writing(), dialect);
        say("migrated");
    }

    static Chart chart(Store store, String episode) {
        return store.records().charts().open(episode, ACT).chartIfOpen().orElseThrow();
    }

    private static void write(KillTask task, Chart chart, String round) {
        String episode = chart.episode().id();
        for (int n = 0; ; n++) {
            if (task == KillTask.CHECK_INS) {
                String id = "round-%s-%d".formatted(round, n);
                chart.checkIns().add(id, "session", "some-glide", json(n));
                say("check-in %s %s %d".formatted(episode, id, n));
            } else if (n % 2 == 0) {
                int number = chart.plans().add(plan(n)).number();
                say("plan %s %d %d".formatted(episode, number, n));
            } else {
                SectionRecord before = chart.section(Section.SITES);
                long version = chart.save(Section.SITES, before.version(), sites(n))
                        .orThrow()
                        .version();
                say("section %s %d %d".formatted(episode, version, n));
            }
        }
    }

    static ObjectNode json(int n) {
        return JsonMapper.shared().createObjectNode().put("n", n);
    }

    static ObjectNode sites(int n) {
        return JsonMapper.shared().createObjectNode().set("sites", json(n));
    }

    private static PlanDraft plan(int n) {
        return new PlanDraft(
                FILLER,
                new ResultInputs(Map.of(Section.HISTORY, 1L), "d".repeat(64)),
                new Stamp("0", "0"),
                json(n),
                json(0),
                json(n));
    }

    /** A whole line at once, whatever other threads say. */
    @SuppressWarnings("SystemOut") // the pipe to the process that kills this one
    private static void say(String line) {
        synchronized (KillWriter.class) {
            System.out.println(line);
            System.out.flush();
        }
    }
}
