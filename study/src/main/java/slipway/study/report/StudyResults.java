package slipway.study.report;

import java.util.ArrayList;
import java.util.List;
import slipway.study.policy.Policy;
import slipway.study.run.StudyPlan;
import slipway.study.run.StudyState;
import slipway.study.run.Tally;
import slipway.study.world.World;

/**
 * All results of a study.
 *
 * @param single every world by itself
 * @param plausible the plausible worlds together, people of all of them alike
 */
public record StudyResults(StudyPlan plan, List<Result> single, List<Result> plausible) {
    /** Name of the plausible worlds together. */
    public static final String ALL_PLAUSIBLE = "plausible";
    /** The program's own way of dosing. */
    public static final String PROGRAM = "program";

    public StudyResults {
        single = List.copyOf(single);
        plausible = List.copyOf(plausible);
    }

    /**
     * The results of a finished run.
     *
     * @throws IllegalArgumentException if it is not finished
     */
    public static StudyResults of(StudyState state) {
        if (!state.complete()) {
            throw new IllegalArgumentException("a study has results only when it is finished");
        }
        StudyPlan plan = state.plan();
        var tallies = new ArrayList<Tally>();
        for (int w = 0; w < plan.worlds().size(); w++) {
            tallies.add(state.tally(w));
        }
        return of(plan, tallies);
    }

    /** The results of these sums, one for every world in its order. */
    public static StudyResults of(StudyPlan plan, List<Tally> tallies) {
        var together = new Tally(plan.policies().size(), plan.days());
        var single = new ArrayList<Result>();
        for (int w = 0; w < plan.worlds().size(); w++) {
            World world = plan.worlds().get(w);
            single.addAll(results(plan, world.id(), tallies.get(w)));
            if (world.plausible()) {
                together.add(tallies.get(w));
            }
        }
        return new StudyResults(plan, single, results(plan, ALL_PLAUSIBLE, together));
    }

    private static List<Result> results(StudyPlan plan, String world, Tally tally) {
        var results = new ArrayList<Result>();
        List<Policy> policies = plan.policies();
        for (int p = 0; p < policies.size(); p++) {
            results.add(new Result(policies.get(p).id(), world, p, tally));
        }
        return results;
    }

    /** The results of one world, in the order of the ways. */
    public List<Result> in(String world) {
        return world.equals(ALL_PLAUSIBLE)
                ? plausible
                : single.stream().filter(result -> result.world().equals(world)).toList();
    }

    /** One way in one world. */
    public Result get(String policy, String world) {
        return in(world).stream()
                .filter(result -> result.policy().equals(policy))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no result of " + policy + " in " + world));
    }
}
