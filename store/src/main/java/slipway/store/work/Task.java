package slipway.store.work;

import java.time.Duration;

/**
 * Work on a schedule.
 *
 * @param name the same on all servers
 * @param again how long after a failure it is tried again, at most {@link SharedWork#LONGEST_HOLD}
 */
public record Task(String name, Turns turns, Duration again, Action action) {
    /** What is done. */
    @FunctionalInterface
    public interface Action {
        /** Does it; gives words on what came of it, without names or findings; empty if nothing was to do. */
        String run() throws Exception;
    }
}
