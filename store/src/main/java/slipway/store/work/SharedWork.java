package slipway.store.work;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import slipway.store.db.Db;
import slipway.store.tables.SharedWorkTable;

/**
 * Who does what is due. A server takes a turn for some minutes, says again and again that it is still at it, and says how
 * it ended. One that died says nothing, so that another takes the same turn after those minutes.
 *
 * <p>Times in the row that the clock cannot have reached, since it was set back meanwhile, bind nobody.
 */
public final class SharedWork {
    /** Longest time for which work can be taken or put off. */
    public static final Duration LONGEST_HOLD = Duration.ofHours(1);

    private static final int WORDS = 300;

    private final Db db;

    public SharedWork(Db db) {
        this.db = db;
    }

    /**
     * Takes the newest turn that is due.
     *
     * @param holder name of this server, for people
     * @param hold for so long at first, at most {@link #LONGEST_HOLD}
     * @return empty if it was done, or somebody is at it
     */
    public Optional<Turn> take(String name, Turns turns, String holder, Duration hold) {
        requireShort(hold);
        if (!isDue(name, turns)) {
            return Optional.empty();
        }
        return db.write(tx -> {
            Instant now = db.now(tx);
            Instant due = turns.newestAt(now);
            addRow(tx, name);
            int taken = tx.update(SharedWorkTable.SHARED_WORK)
                    .set(SharedWorkTable.HOLDER, holder)
                    .set(SharedWorkTable.HELD_UNTIL, now.plus(hold))
                    .set(SharedWorkTable.TAKING, SharedWorkTable.TAKING.plus(1))
                    .where(SharedWorkTable.NAME.eq(name), isFree(now), isUndone(due, now))
                    .execute();
            return Optional.of(taken)
                    .filter(count -> count == 1)
                    .map(count -> new Turn(name, due, value(tx, name, SharedWorkTable.TAKING)));
        });
    }

    /** Asked first without writing, so that idle servers write nothing. */
    private boolean isDue(String name, Turns turns) {
        return db.read(query -> {
            Instant now = db.now(query);
            boolean known = query.fetchExists(SharedWorkTable.SHARED_WORK, SharedWorkTable.NAME.eq(name));
            return !known
                    || query.fetchExists(
                            SharedWorkTable.SHARED_WORK,
                            SharedWorkTable.NAME.eq(name),
                            isFree(now),
                            isUndone(turns.newestAt(now), now));
        });
    }

    private static Condition isFree(Instant now) {
        return SharedWorkTable.HELD_UNTIL.le(now).or(SharedWorkTable.HELD_UNTIL.gt(now.plus(LONGEST_HOLD)));
    }

    private static Condition isUndone(Instant due, Instant now) {
        return SharedWorkTable.TURN.lt(due).or(SharedWorkTable.TURN.gt(now));
    }

    private static void addRow(DSLContext tx, String name) {
        tx.insertInto(SharedWorkTable.SHARED_WORK)
                .set(SharedWorkTable.NAME, name)
                .set(SharedWorkTable.TURN, Instant.EPOCH)
                .set(SharedWorkTable.HOLDER, "")
                .set(SharedWorkTable.HELD_UNTIL, Instant.EPOCH)
                .set(SharedWorkTable.TAKING, 0L)
                .set(SharedWorkTable.FAILURES, 0)
                .set(SharedWorkTable.WORDS, "")
                .onConflict(SharedWorkTable.NAME)
                .doNothing()
                .execute();
    }

    /**
     * Says that the work goes on.
     *
     * @return false if another server has taken it over
     */
    public boolean extend(Turn turn, Duration hold) {
        requireShort(hold);
        return db.write(tx -> tx.update(SharedWorkTable.SHARED_WORK)
                        .set(SharedWorkTable.HELD_UNTIL, db.now(tx).plus(hold))
                        .where(isMine(turn))
                        .execute()
                == 1);
    }

    /**
     * Says that it went well: the turn is done.
     *
     * @param words what came of it, without names or findings
     * @return false if another server has taken it over; its word counts then
     */
    public boolean done(Turn turn, String words) {
        return db.write(tx -> {
            Instant now = db.now(tx);
            return tx.update(SharedWorkTable.SHARED_WORK)
                            .set(SharedWorkTable.TURN, turn.due())
                            .set(SharedWorkTable.HELD_UNTIL, Instant.EPOCH)
                            .set(SharedWorkTable.SUCCEEDED_AT, now)
                            .set(SharedWorkTable.ENDED_AT, now)
                            .set(SharedWorkTable.FAILURES, 0)
                            .set(SharedWorkTable.WORDS, cut(words))
                            .where(isMine(turn))
                            .execute()
                    == 1;
        });
    }

    /**
     * Says that it did not go well: the turn is due again after a while.
     *
     * @param words what happened, without names or findings
     * @param again after so long, at most {@link #LONGEST_HOLD}
     * @return how often it has failed in a row, or 0 if another server has taken it over
     */
    public int failed(Turn turn, String words, Duration again) {
        requireShort(again);
        return db.write(tx -> {
            Instant now = db.now(tx);
            int changed = tx.update(SharedWorkTable.SHARED_WORK)
                    .set(SharedWorkTable.HELD_UNTIL, now.plus(again))
                    .set(SharedWorkTable.ENDED_AT, now)
                    .set(SharedWorkTable.FAILURES, SharedWorkTable.FAILURES.plus(1))
                    .set(SharedWorkTable.WORDS, cut(words))
                    .where(isMine(turn))
                    .execute();
            return changed == 0 ? 0 : value(tx, turn.name(), SharedWorkTable.FAILURES);
        });
    }

    /** What is known of all work, by name. */
    public List<WorkNote> notes() {
        return db.read(query -> query.select(
                        SharedWorkTable.NAME,
                        SharedWorkTable.SUCCEEDED_AT,
                        SharedWorkTable.ENDED_AT,
                        SharedWorkTable.FAILURES,
                        SharedWorkTable.WORDS)
                .from(SharedWorkTable.SHARED_WORK)
                .orderBy(SharedWorkTable.NAME)
                .fetch(row -> new WorkNote(
                        row.value1(),
                        Optional.ofNullable(row.value2()),
                        Optional.ofNullable(row.value3()),
                        row.value4(),
                        row.value5())));
    }

    /** What is known of one work; empty before it was first due. */
    public Optional<WorkNote> note(String name) {
        return notes().stream().filter(note -> note.name().equals(name)).findFirst();
    }

    private static Condition isMine(Turn turn) {
        return SharedWorkTable.NAME.eq(turn.name()).and(SharedWorkTable.TAKING.eq(turn.taking()));
    }

    private static <T> T value(DSLContext tx, String name, Field<T> field) {
        return tx.select(field)
                .from(SharedWorkTable.SHARED_WORK)
                .where(SharedWorkTable.NAME.eq(name))
                .fetchSingle(field);
    }

    private static String cut(String words) {
        return words.substring(0, Math.min(WORDS, words.length()));
    }

    private static void requireShort(Duration hold) {
        if (hold.isNegative() || hold.isZero() || hold.compareTo(LONGEST_HOLD) > 0) {
            throw new IllegalArgumentException("must be above 0 and at most %s, was %s".formatted(LONGEST_HOLD, hold));
        }
    }
}
