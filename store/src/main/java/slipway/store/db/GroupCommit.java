package slipway.store.db;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jooq.DSLContext;
import org.jooq.exception.DataAccessException;

/**
 * One writer for many callers: whoever comes while a commit goes to the disk waits, and all who wait go to the disk
 * together with the next. Nobody waits for more company than is there, so that a lone caller is as fast as before.
 *
 * <p>A caller whose transaction refuses (an unknown id, say) is undone alone. After an error of the database itself it
 * is not known what the database still holds of the common transaction; all of it is undone then, and each is run again
 * on its own.
 */
final class GroupCommit {
    /** More than this do not go together, so that the first does not wait for the last for long. */
    private static final int MOST = 256;

    private final DSLContext writer;
    private final Object monitor = new Object();
    private final List<Job<?>> waiting = new ArrayList<>();
    private boolean busy;

    GroupCommit(DSLContext writer) {
        this.writer = writer;
    }

    /** Runs one transaction; on return it is committed. */
    <T> T write(Function<DSLContext, T> transaction) {
        var job = new Job<>(transaction);
        synchronized (monitor) {
            waiting.add(job);
        }
        // Behind the bound a caller may have to run others before its own turn comes.
        for (List<Job<?>> batch = next(job); !batch.isEmpty(); batch = next(job)) {
            try {
                run(batch);
            } finally {
                synchronized (monitor) {
                    batch.forEach(done -> done.finished = true);
                    busy = false;
                    monitor.notifyAll();
                }
            }
        }
        return job.result();
    }

    /** Waits until a job is finished, or nobody is writing; then gives what this caller is to write next. */
    private List<Job<?>> next(Job<?> job) {
        boolean interrupted = false;
        try {
            synchronized (monitor) {
                while (busy && !job.finished) {
                    try {
                        monitor.wait();
                    } catch (InterruptedException e) {
                        // The job may be on its way to the disk; its caller learns of the interruption afterwards.
                        interrupted = true;
                    }
                }
                if (job.finished) {
                    return List.of();
                }
                busy = true;
                List<Job<?>> first = waiting.subList(0, Math.min(waiting.size(), MOST));
                var batch = new ArrayList<>(first);
                first.clear();
                return batch;
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void run(List<Job<?>> batch) {
        if (batch.size() == 1) {
            alone(batch.get(0));
            return;
        }
        try {
            writer.transaction(outer -> batch.forEach(job -> job.runWithin(outer.dsl())));
        } catch (RuntimeException | Error e) {
            batch.forEach(this::alone);
        }
    }

    private <T> void alone(Job<T> job) {
        try {
            job.value = Optional.ofNullable(writer.transactionResult(inner -> job.transaction.apply(inner.dsl())));
            job.failure = Optional.empty();
        } catch (RuntimeException | Error e) {
            job.failure = Optional.of(e);
        }
    }

    private static final class Job<T> {
        private final Function<DSLContext, T> transaction;
        private Optional<T> value = Optional.empty();
        private Optional<Throwable> failure = Optional.empty();
        private boolean finished;

        Job(Function<DSLContext, T> transaction) {
            this.transaction = transaction;
        }

        /** Runs with a savepoint around it. */
        void runWithin(DSLContext outer) {
            try {
                value = Optional.ofNullable(outer.transactionResult(inner -> transaction.apply(inner.dsl())));
            } catch (DataAccessException e) {
                throw e;
            } catch (RuntimeException e) {
                failure = Optional.of(e);
            }
        }

        T result() {
            if (failure.isPresent()) {
                throw rethrown(failure.get());
            }
            return value.orElseThrow(() -> new IllegalStateException("a transaction gave nothing"));
        }

        private static RuntimeException rethrown(Throwable failure) {
            if (failure instanceof Error error) {
                throw error;
            }
            return (RuntimeException) failure;
        }
    }
}
