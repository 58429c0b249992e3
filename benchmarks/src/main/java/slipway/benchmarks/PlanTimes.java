package slipway.benchmarks;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.MeshDensity;
import slipway.mechanics.pathway.PathwayModel;

/** How the cost of a posture grows with draws and with nodes; printed as a Markdown table. All cores. */
public final class PlanTimes {
    private static final int ROUNDS = 15;
    private static final Posture POSTURE = Posture.parse(SolveBenchmark.POSTURE);

    private PlanTimes() {}

    /** Prints the table. */
    public static void main(String[] args) {
        System.out.println("| draws | nodes | one posture, ms | per draw and node, ns |");
        System.out.println("| --- | --- | --- | --- |");
        for (int draws : List.of(128, 256, 512, 1024)) {
            row(draws, MeshDensity.STANDARD);
        }
        row(512, MeshDensity.STANDARD.refined(2));
        row(512, MeshDensity.STANDARD.refined(4));
    }

    private static void row(int draws, MeshDensity density) {
        DrawSet set = FittedParameters.bundled().draws(draws, 1);
        var model = new PathwayModel(Person.STANDARD, set, density);
        double[] ms = new double[ROUNDS];
        for (int r = -ROUNDS; r < ROUNDS; r++) {
            long start = System.nanoTime();
            model.respond(POSTURE);
            if (r >= 0) {
                ms[r] = (System.nanoTime() - start) / 1e6;
            }
        }
        Arrays.sort(ms);
        double median = ms[ROUNDS / 2];
        System.out.printf(
                Locale.ROOT,
                "| %d | %d | %.1f | %.1f |%n",
                draws,
                model.nodes(),
                median,
                1e6 * median / draws / model.nodes());
    }
}
