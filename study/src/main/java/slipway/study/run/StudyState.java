package slipway.study.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * How far a study has come: for every world the sums so far and which batches of people are in them. Shared by the
 * threads of a run.
 */
public final class StudyState {
    /** People that one thread simulates at a time. */
    public static final int BATCH = 50;

    private final StudyPlan plan;
    private final List<BitSet> done = new ArrayList<>();
    private final List<Tally> tallies = new ArrayList<>();

    /** Nothing done. */
    public StudyState(StudyPlan plan) {
        this.plan = plan;
        for (int w = 0; w < plan.worlds().size(); w++) {
            done.add(new BitSet());
            tallies.add(new Tally(plan.policies().size(), plan.days()));
        }
    }

    /** What is run. */
    public StudyPlan plan() {
        return plan;
    }

    /** Batches of a world. */
    public int batches() {
        return Math.toIntExact((plan.people() + BATCH - 1) / BATCH);
    }

    /** Batches of all worlds. */
    public long allBatches() {
        return (long) batches() * plan.worlds().size();
    }

    /** Batches done in all worlds. */
    public synchronized long doneBatches() {
        return done.stream().mapToLong(BitSet::cardinality).sum();
    }

    /** Whether everything is done. */
    public boolean complete() {
        return doneBatches() == allBatches();
    }

    synchronized boolean isDone(int world, int batch) {
        return done.get(world).get(batch);
    }

    synchronized void add(int world, int batch, Tally tally) {
        if (done.get(world).get(batch)) {
            throw new IllegalStateException("batch %d of world %d is counted already".formatted(batch, world));
        }
        done.get(world).set(batch);
        tallies.get(world).add(tally);
    }

    /** Which batches of a world are done, as 64-bit words. */
    public synchronized long[] doneWords(int world) {
        return done.get(world).toLongArray();
    }

    /** The sums of a world so far, to be read while nobody adds. */
    public synchronized Tally tally(int world) {
        return tallies.get(world);
    }

    /** Puts back what was saved of a world. */
    public synchronized void restore(int world, long[] doneWords, long[] numbers) {
        done.set(world, BitSet.valueOf(doneWords));
        tallies.set(world, Tally.of(plan.policies().size(), plan.days(), numbers));
    }
}
