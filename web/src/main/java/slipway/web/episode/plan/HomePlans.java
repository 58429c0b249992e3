package slipway.web.episode.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import slipway.care.follow.FollowPlans;
import slipway.care.follow.HomePlan;
import slipway.care.record.chart.PlanDraft;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.response.ladder.Ceiling;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What is followed at home, as it is kept with a plan. */
public final class HomePlans {
    private HomePlans() {}

    /** What to keep; empty if the screening stops the plan. Solves the postures on the way of each glide. */
    public static ObjectNode kept(VisitPlan visit) {
        return visit.stopped()
                ? JsonMapper.shared().createObjectNode()
                : JsonMapper.shared().valueToTree(FollowPlans.home(visit));
    }

    /** What was kept, within the ceilings that the therapist set; empty if nothing was. */
    public static Optional<HomePlan> read(PlanDraft plan) {
        if (plan.home().isEmpty()) {
            return Optional.empty();
        }
        HomePlan home = JsonMapper.shared().treeToValue(plan.home(), HomePlan.class);
        Map<String, Ceiling> ceilings = new HashMap<>();
        plan.ceilings()
                .properties()
                .forEach(each -> ceilings.put(
                        each.getKey(),
                        new Ceiling(
                                each.getValue().path("repetitions").asInt(),
                                each.getValue().path("sessionsPerDay").asInt(),
                                1)));
        return Optional.of(home.within(ceilings));
    }
}
