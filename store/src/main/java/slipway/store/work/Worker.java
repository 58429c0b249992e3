package slipway.store.work;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import slipway.store.backup.DamageException;
import slipway.store.db.StoreFailure;

/** Looks again and again whether something is due, and does it if no other server has taken it. */
public final class Worker implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Worker.class);
    private static final Duration HOLD = Duration.ofMinutes(3);

    private final SharedWork shared;
    private final String server;
    private final List<Task> tasks;
    private final ScheduledExecutorService hands = Executors.newSingleThreadScheduledExecutor(Worker::thread);
    private final ScheduledExecutorService pulse = Executors.newSingleThreadScheduledExecutor(Worker::thread);

    /** Does nothing before it is started. */
    public Worker(SharedWork shared, String server, List<Task> tasks) {
        this.shared = shared;
        this.server = server;
        this.tasks = List.copyOf(tasks);
    }

    private static Thread thread(Runnable work) {
        var thread = new Thread(work, "slipway-work");
        thread.setDaemon(true);
        return thread;
    }

    /** Looks from now on, as often as this. */
    public void start(Duration every) {
        var unused =
                hands.scheduleWithFixedDelay(this::round, every.toMillis(), every.toMillis(), TimeUnit.MILLISECONDS);
    }

    /** Looks at every task once, and does what is due; gives how many were done well. */
    public int round() {
        int done = 0;
        for (Task task : tasks) {
            try {
                done += look(task) ? 1 : 0;
            } catch (StoreFailure e) {
                LOG.error("work {} cannot be looked at: {}", task.name(), words(e));
            } catch (RuntimeException e) {
                // A later round must come whatever this one met.
                LOG.error("work {} broke: {}", task.name(), words(e));
            }
        }
        return done;
    }

    private boolean look(Task task) {
        Optional<Turn> taken = shared.take(task.name(), task.turns(), server, HOLD);
        if (taken.isEmpty()) {
            return false;
        }
        Turn turn = taken.get();
        ScheduledFuture<?> beats = pulse.scheduleWithFixedDelay(
                () -> beat(turn), HOLD.toMillis() / 3, HOLD.toMillis() / 3, TimeUnit.MILLISECONDS);
        try {
            String words = task.action().run();
            boolean mine = shared.done(turn, words);
            if (!words.isEmpty()) {
                LOG.info(
                        "work {} done{}: {}",
                        task.name(),
                        mine ? "" : ", another server took it over meanwhile",
                        words);
            }
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            failed(task, turn, e);
            return false;
        } catch (Exception | OutOfMemoryError e) {
            failed(task, turn, e);
            return false;
        } finally {
            beats.cancel(false);
        }
    }

    private void failed(Task task, Turn turn, Throwable fault) {
        int failures = shared.failed(turn, words(fault), task.again());
        LOG.error("work {} FAILED, {} in a row: {}", task.name(), failures, words(fault));
    }

    private void beat(Turn turn) {
        try {
            shared.extend(turn, HOLD);
        } catch (RuntimeException e) {
            LOG.warn("work {} could not say that it goes on: {}", turn.name(), words(e));
        }
    }

    /** Messages of files and of the store hold paths and statements; those of anything else could hold names. */
    private static String words(Throwable fault) {
        boolean plain =
                fault instanceof IOException || fault instanceof StoreFailure || fault instanceof DamageException;
        String type = fault.getClass().getSimpleName();
        return plain ? type + ": " + fault.getMessage() : type;
    }

    /** Waits for what it is at, some seconds. */
    @Override
    public void close() {
        hands.shutdown();
        try {
            if (!hands.awaitTermination(20, TimeUnit.SECONDS)) {
                hands.shutdownNow();
            }
        } catch (InterruptedException e) {
            hands.shutdownNow();
            Thread.currentThread().interrupt();
        }
        pulse.shutdownNow();
    }
}
