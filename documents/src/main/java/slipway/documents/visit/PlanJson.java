package slipway.documents.visit;

import slipway.care.visit.VisitPlan;
import slipway.reasoning.plan.CarePlan;
import slipway.reasoning.plan.PlanResult;
import slipway.reasoning.screening.Match;
import slipway.reasoning.screening.ScreeningResult;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The plan as JSON, in the form of its schema ({@code slipway schema plan}). */
public final class PlanJson {
    private static final int FORMAT = 1;
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private PlanJson() {}

    /** The JSON text, ending in a new line. When the screening stops the plan, only what led to that is there. */
    public static String of(VisitPlan visit) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("format", FORMAT);
        root.put("caseId", visit.file().id());
        root.set("screening", screening(visit.screening()));
        visit.result().ifPresent(result -> addPlan(root, visit, result));
        root.set("cautions", MAPPER.valueToTree(visit.cautions()));
        root.set("model", MAPPER.valueToTree(visit.stamp()));
        return MAPPER.writeValueAsString(root) + "\n";
    }

    private static void addPlan(ObjectNode root, VisitPlan visit, PlanResult result) {
        CarePlan plan = result.plan();
        root.set("sites", sites(visit, plan));
        root.set("tolerance", MAPPER.valueToTree(plan.tolerance()));
        root.set("irritability", MAPPER.valueToTree(plan.irritability()));
        ObjectNode exercises = MAPPER.valueToTree(plan.plan());
        exercises.set("notes", MAPPER.valueToTree(result.dose().notes()));
        root.set("plan", exercises);
    }

    private static ObjectNode screening(ScreeningResult result) {
        ObjectNode screening = MAPPER.createObjectNode();
        screening.put("level", result.level().key());
        result.actWithin().ifPresent(within -> screening.put("actWithin", within.key()));
        screening.put("allows", result.allows().key());
        screening.set("notAsked", MAPPER.valueToTree(result.notAsked()));
        screening.set("open", MAPPER.valueToTree(result.openPoints()));
        ArrayNode rules = screening.putArray("rules");
        result.matched().forEach(match -> rules.add(rule(match)));
        return screening;
    }

    private static ObjectNode rule(Match match) {
        ObjectNode rule = MAPPER.createObjectNode();
        rule.put("id", match.rule().id());
        rule.put("level", match.rule().level().key());
        rule.put("actWithin", match.rule().action().actWithin().key());
        rule.put("allows", match.rule().action().allows().key());
        rule.put("because", match.because());
        rule.put("text", match.rule().words().tellEn());
        rule.put("source", match.rule().basis().source());
        rule.put("mark", match.rule().basis().mark());
        match.clearance().ifPresent(clearance -> {
            ObjectNode cleared = rule.putObject("cleared");
            cleared.put("who", clearance.who());
            cleared.put("when", clearance.when().toString());
            cleared.put("outcome", clearance.outcome());
        });
        return rule;
    }

    private static ArrayNode sites(VisitPlan visit, CarePlan plan) {
        ArrayNode sites = MAPPER.valueToTree(plan.sites());
        for (JsonNode site : sites) {
            String name = site.path("site").asString();
            visit.file().sites().stream()
                    .filter(given -> given.name().equals(name))
                    .findFirst()
                    .ifPresent(given -> ((ObjectNode) site).put("reason", given.reason()));
        }
        return sites;
    }
}
