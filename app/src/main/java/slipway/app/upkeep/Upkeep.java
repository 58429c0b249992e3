package slipway.app.upkeep;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.store.Store;
import slipway.store.work.Task;
import slipway.store.work.Turns;
import slipway.store.work.Worker;
import slipway.web.WebServer;
import slipway.web.alerts.Escalation;
import slipway.web.remind.MailSettings;
import slipway.web.remind.Reminding;

/** All work on a schedule of a server. */
public final class Upkeep {
    /** How often a server looks whether something is due. */
    public static final Duration LOOK_EVERY = Duration.ofSeconds(20);

    private static final Duration SWEEP_EVERY = Duration.ofMinutes(10);
    private static final Duration ALERTS_EVERY = Duration.ofMinutes(1);
    private static final Duration MAIL_EVERY = Duration.ofMinutes(5);
    /** When nobody waits for anything. */
    private static final LocalTime FIGURES_AT = LocalTime.of(1, 30);

    private static final Duration AGAIN = Duration.ofMinutes(1);

    /** Whoever comes back after this long starts from what is recorded. */
    private static final Duration DRAFTS_KEPT = Duration.ofDays(14);

    private Upkeep() {}

    /** For a running server on these records; does nothing before it is started. */
    public static Worker of(Store store, WebServer server, Path folder, Optional<NightlyBackup> backup) {
        Escalation alerts = server.part(Escalation.class);
        return worker(store, folder, backup, Clock.systemUTC(), () -> raised(alerts.run()));
    }

    /**
     * Reminders by e-mail, with hands of their own: a mail server that hangs must not hold up alerts or backups. Without
     * settings nothing is done.
     */
    public static Worker reminders(Store store, WebServer server, Optional<MailSettings> settings) {
        Reminding reminding = server.part(Reminding.class);
        List<Task> tasks = settings.stream()
                .map(mail -> new Task(
                        Reminding.NAME,
                        Turns.every(MAIL_EVERY),
                        AGAIN,
                        () -> reminding.run(mail).words()))
                .toList();
        return new Worker(store.work(), ManagementFactory.getRuntimeMXBean().getName(), tasks);
    }

    /** All but the reminders, with a clock, and with something in the place of the alerts. */
    static Worker worker(Store store, Path folder, Optional<NightlyBackup> backup, Clock clock, Task.Action alerts) {
        var tasks = new ArrayList<>(List.of(
                new Task("alerts", Turns.every(ALERTS_EVERY), AGAIN, alerts),
                new Task("sweep", Turns.every(SWEEP_EVERY), AGAIN, () -> sweep(store, clock)),
                new Task(
                        "caseload",
                        Turns.daily(FIGURES_AT, ZoneId.systemDefault()),
                        AGAIN,
                        new NightlyFigures(store.records(), clock)::run),
                new Task("keeping", Turns.every(Duration.ofDays(7)), AGAIN, new Keeping(store.records(), clock)::run)));
        backup.ifPresent(nightly -> tasks.add(nightly.task(store, folder, clock)));
        return new Worker(store.work(), ManagementFactory.getRuntimeMXBean().getName(), tasks);
    }

    private static String raised(int count) {
        return count == 0 ? "" : count + " alerts went to somebody else";
    }

    private static String sweep(Store store, Clock clock) {
        Instant now = clock.instant();
        int sessions = store.sessions().deleteExpired(now);
        store.records().drafts().purge(now.minus(DRAFTS_KEPT));
        return sessions == 0 ? "" : sessions + " sessions had ended";
    }
}
