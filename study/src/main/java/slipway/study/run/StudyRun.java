package slipway.study.run;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;

/** Runs what a state still lacks, on several threads. */
public final class StudyRun {
    private final Simulation simulation;

    /** With this simulation. */
    public StudyRun(Simulation simulation) {
        this.simulation = simulation;
    }

    /**
     * Runs until everything is done or the caller wants no more; a batch that is begun is finished.
     *
     * @param threads at least 1
     * @param cancelled asked before every batch
     * @param afterBatch called after every batch, by one thread at a time
     */
    public void run(StudyState state, int threads, BooleanSupplier cancelled, Runnable afterBatch) {
        var next = new AtomicLong();
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try {
            var running = new ArrayList<Future<?>>();
            for (int i = 0; i < threads; i++) {
                running.add(workers.submit(() -> work(state, next, cancelled, afterBatch)));
            }
            await(running);
        } finally {
            workers.shutdownNow();
        }
    }

    private static void await(List<Future<?>> running) {
        for (Future<?> worker : running) {
            try {
                worker.get();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            } catch (ExecutionException e) {
                throw new IllegalStateException("a batch of simulated people failed", e.getCause());
            }
        }
    }

    private void work(StudyState state, AtomicLong next, BooleanSupplier cancelled, Runnable afterBatch) {
        while (!cancelled.getAsBoolean() && !Thread.currentThread().isInterrupted()) {
            long unit = next.getAndIncrement();
            if (unit >= state.allBatches()) {
                return;
            }
            // Worlds in turn, so that a first look while it runs shows all of them.
            int world = (int) (unit % state.plan().worlds().size());
            int batch = (int) (unit / state.plan().worlds().size());
            if (!state.isDone(world, batch)) {
                state.add(world, batch, batch(state, world, batch));
                synchronized (state) {
                    afterBatch.run();
                }
            }
        }
    }

    private Tally batch(StudyState state, int world, int batch) {
        StudyPlan plan = state.plan();
        long from = (long) batch * StudyState.BATCH;
        long to = Math.min(plan.people(), from + StudyState.BATCH);
        return simulation.run(plan, plan.worlds().get(world), from, to);
    }
}
