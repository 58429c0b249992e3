package slipway.studyspark;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import scala.Tuple2;
import slipway.study.load.LoadTable;
import slipway.study.run.Simulation;
import slipway.study.run.StudyPlan;
import slipway.study.run.StudyState;
import slipway.study.run.Tally;

/**
 * Runs a study on the machines of a Spark context. The chance of a person follows from seed, world and number alone, and
 * sums are of whole numbers: how people are divided among machines and in which order their sums arrive changes nothing.
 */
final class SparkStudy {
    private final JavaSparkContext spark;
    private final LoadTable loads;

    /** With this table of loads: computed once and sent around, so that all machines use the same. */
    SparkStudy(JavaSparkContext spark, LoadTable loads) {
        this.spark = spark;
        this.loads = loads;
    }

    /**
     * The sums of every world, in the order of the worlds.
     *
     * <p>What travels back is one tally for each world and partition, whatever the number of people.
     *
     * @param partitions in so many parts, at least 1
     * @throws IllegalStateException if people were lost or counted twice
     */
    List<Tally> run(StudyPlan plan, int partitions) {
        Broadcast<LoadTable> table = spark.broadcast(loads);
        try {
            Map<Integer, Tally> tallies = spark.parallelize(units(plan), partitions)
                    .mapPartitionsToPair(units -> work(units, plan, table.value()))
                    .reduceByKey(SparkStudy::together)
                    .collectAsMap();
            return IntStream.range(0, plan.worlds().size())
                    .mapToObj(world -> whole(plan, world, tallies))
                    .toList();
        } finally {
            table.destroy();
        }
    }

    /** One number for each batch of people of each world, worlds in turn. */
    private static List<Integer> units(StudyPlan plan) {
        return IntStream.range(0, Math.toIntExact(new StudyState(plan).allBatches()))
                .boxed()
                .toList();
    }

    private static Iterator<Tuple2<Integer, Tally>> work(Iterator<Integer> units, StudyPlan plan, LoadTable table) {
        var simulation = new Simulation(table);
        var tallies = new TreeMap<Integer, Tally>();
        while (units.hasNext()) {
            int unit = units.next();
            int world = unit % plan.worlds().size();
            long from = (long) (unit / plan.worlds().size()) * StudyState.BATCH;
            long to = Math.min(plan.people(), from + StudyState.BATCH);
            tallies.merge(world, simulation.run(plan, plan.worlds().get(world), from, to), SparkStudy::together);
        }
        var pairs = new ArrayList<Tuple2<Integer, Tally>>();
        tallies.forEach((world, tally) -> pairs.add(new Tuple2<>(world, tally)));
        return pairs.iterator();
    }

    private static Tally together(Tally one, Tally other) {
        one.add(other);
        return one;
    }

    private static Tally whole(StudyPlan plan, int world, Map<Integer, Tally> tallies) {
        Tally tally = tallies.get(world);
        if (tally == null || tally.people() != plan.people()) {
            throw new IllegalStateException("world %d must have %d people, had %d"
                    .formatted(world, plan.people(), tally == null ? 0 : tally.people()));
        }
        return tally;
    }
}
