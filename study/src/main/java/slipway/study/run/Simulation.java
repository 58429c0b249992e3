package slipway.study.run;

import java.util.List;
import slipway.study.load.LoadTable;
import slipway.study.person.Hidden;
import slipway.study.policy.Policy;
import slipway.study.world.World;

/** Runs a row of people of one world under every way of dosing. Safe for use by several threads at once. */
public final class Simulation {
    private final LoadTable table;

    /** On these loads. */
    public Simulation(LoadTable table) {
        this.table = table;
    }

    /**
     * The sums over the people with numbers {@code from} to {@code to} − 1.
     *
     * <p>Cost: linear in people, days and ways of dosing.
     */
    public Tally run(StudyPlan plan, World world, long from, long to) {
        List<Policy> policies = plan.policies();
        var tally = new Tally(policies.size(), plan.days());
        for (long number = from; number < to; number++) {
            tally.add(outcomes(plan, world, number));
        }
        return tally;
    }

    /** The outcomes of one person, by way of dosing. */
    Outcome[] outcomes(StudyPlan plan, World world, long number) {
        Hidden hidden = Hidden.of(world, table, plan.seed(), number);
        return plan.policies().stream()
                .map(policy -> Episode.run(policy, hidden, plan.days()))
                .toArray(Outcome[]::new);
    }
}
