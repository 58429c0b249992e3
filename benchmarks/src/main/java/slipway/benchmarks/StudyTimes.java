package slipway.benchmarks;

import java.util.List;
import java.util.Locale;
import slipway.study.load.LoadTables;
import slipway.study.run.Simulation;
import slipway.study.run.StudyPlan;
import slipway.study.run.StudyRun;
import slipway.study.run.StudyState;

/** How the cost of a study grows with the people in it; printed as a Markdown table. All cores. */
public final class StudyTimes {
    private static final int DAYS = 56;

    private StudyTimes() {}

    /** Prints the table. */
    public static void main(String[] args) {
        var simulation = new Simulation(LoadTables.compute());
        measure(simulation, StudyState.BATCH);
        System.out.println("| people in every world | seconds | ms a person, all worlds and ways | memory, MB |");
        System.out.println("| --- | --- | --- | --- |");
        for (int people : List.of(100, 200, 400)) {
            double seconds = measure(simulation, people);
            System.out.printf(
                    Locale.ROOT,
                    "| %d | %.1f | %.1f | %d |%n",
                    people,
                    seconds,
                    1000 * seconds / people,
                    (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) >> 20);
        }
    }

    private static double measure(Simulation simulation, int people) {
        var state = new StudyState(new StudyPlan(people, DAYS, 1, "benchmark"));
        long start = System.nanoTime();
        new StudyRun(simulation).run(state, Runtime.getRuntime().availableProcessors(), () -> false, () -> {});
        return (System.nanoTime() - start) / 1e9;
    }
}
