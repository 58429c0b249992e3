package slipway.study.run;

import java.io.Serializable;
import java.util.List;
import slipway.mechanics.parameters.FittedParameters;
import slipway.study.data.StudyData;
import slipway.study.policy.Policies;
import slipway.study.policy.Policy;
import slipway.study.world.World;
import slipway.study.world.Worlds;

/**
 * What is run.
 *
 * @param people in every world
 * @param days of care
 * @param seed of all chance
 * @param version of the program
 */
public record StudyPlan(long people, int days, long seed, String version) implements Serializable {
    /** Limits of the command line: assumptions of what is of use. */
    public static final int MOST_DAYS = 366;

    public StudyPlan {
        if (people < 2 || days < 1 || days > MOST_DAYS) {
            throw new IllegalArgumentException(
                    "a study needs 2 people or more and 1 to %d days, was %d people and %d days"
                            .formatted(MOST_DAYS, people, days));
        }
    }

    /** The worlds, in their order. */
    public List<World> worlds() {
        return Worlds.list();
    }

    /** The ways of dosing, the main comparator first. */
    public List<Policy> policies() {
        return Policies.list();
    }

    /** Two runs may be joined only if this is the same. */
    public String fingerprint() {
        return "%d people, %d days, seed %d, slipway %s, tables %s, nerve %s, ways %s"
                .formatted(
                        people,
                        days,
                        seed,
                        version,
                        StudyData.sha256(),
                        FittedParameters.sha256(),
                        String.join(" ", policies().stream().map(Policy::id).toList()));
    }
}
