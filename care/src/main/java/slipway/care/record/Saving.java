package slipway.care.record;

import java.util.Optional;

/**
 * What came of a change: it was written, or somebody else had changed the same thing since it was read. Then nothing is
 * written, and the current state is told, so that the second editor can see both and loses nothing.
 */
public sealed interface Saving<T> {
    /**
     * Written.
     *
     * @param now as it stands now, with its new version
     */
    record Saved<T>(T now) implements Saving<T> {}

    /**
     * Not written, since the expected version is not the current one.
     *
     * @param current as it stands now, written by somebody else
     */
    record Stale<T>(T current) implements Saving<T> {}

    /** What was written; empty if it was stale. */
    default Optional<T> saved() {
        return this instanceof Saved<T> done ? Optional.of(done.now()) : Optional.empty();
    }

    /** What was written, for callers that have just read the version. */
    default T orThrow() {
        return saved().orElseThrow(() -> new IllegalStateException("somebody else has changed it meanwhile"));
    }
}
