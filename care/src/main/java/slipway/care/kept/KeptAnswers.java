package slipway.care.kept;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;

/**
 * The last answers, each worked out once. A known answer never waits for one that is being worked out, and who asks what is
 * being worked out waits for that. Safe for several threads.
 */
public final class KeptAnswers<K, V> {
    private final int most;
    private final Semaphore room;
    private final Map<K, FutureTask<V>> answers;

    /** For answers that are worked out by as many as ask. */
    public KeptAnswers(int most) {
        this(most, Integer.MAX_VALUE);
    }

    /**
     * @param most how many are kept; then the one that nobody asked for longest is forgotten
     * @param atOnce how many are worked out at the same time, so that the memory they take has a bound; others wait their turn
     */
    public KeptAnswers(int most, int atOnce) {
        this.most = most;
        room = new Semaphore(atOnce, true);
        answers = new LinkedHashMap<>(most + 1, 1, true);
    }

    /** The answer to a question. What fails is thrown to everybody who waits, and tried anew by the next who asks. */
    public V get(K question, Supplier<V> work) {
        FutureTask<V> task = task(question, work);
        // Does nothing if another thread began it.
        task.run();
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while the answer was worked out", e);
        } catch (ExecutionException e) {
            forget(question, task);
            if (e.getCause() instanceof RuntimeException failure) {
                throw failure;
            }
            throw new IllegalStateException("the answer was not worked out", e.getCause());
        }
    }

    private FutureTask<V> task(K question, Supplier<V> work) {
        synchronized (answers) {
            FutureTask<V> task = answers.computeIfAbsent(question, each -> new FutureTask<>(() -> inTurn(work)));
            if (answers.size() > most) {
                answers.remove(answers.keySet().iterator().next());
            }
            return task;
        }
    }

    private V inTurn(Supplier<V> work) {
        room.acquireUninterruptibly();
        try {
            return work.get();
        } finally {
            room.release();
        }
    }

    private void forget(K question, FutureTask<V> failed) {
        synchronized (answers) {
            answers.remove(question, failed);
        }
    }
}
