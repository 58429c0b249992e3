package slipway.documents.visit;

import java.util.Optional;
import slipway.care.casefile.SiteWeight;
import slipway.care.visit.Companion;
import slipway.care.visit.VisitPlan;
import slipway.exercises.exercise.Dose;
import slipway.exercises.exercise.Language;
import slipway.reasoning.plan.PlanResult;
import slipway.reasoning.plan.ScreeningSummary;
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
        visit.result().ifPresentOrElse(result -> addPlan(root, visit, result), () -> addScreening(root, visit));
        return MAPPER.writeValueAsString(root) + "\n";
    }

    private static void addPlan(ObjectNode root, VisitPlan visit, PlanResult result) {
        ObjectNode plan = MAPPER.valueToTree(result.plan());
        root.setAll(plan);
        root.set("cautions", MAPPER.valueToTree(visit.cautions()));
        ((ObjectNode) root.path("plan"))
                .set("notes", MAPPER.valueToTree(result.dose().notes()));
        ((ObjectNode) root.path("plan")).set("companions", companions(visit));
        ((ObjectNode) root.path("plan")).set("runnersUp", MAPPER.valueToTree(visit.runnersUp()));
        for (JsonNode site : root.path("sites")) {
            reasonOf(visit, site.path("site").asString())
                    .ifPresent(reason -> ((ObjectNode) site).put("reason", reason));
        }
    }

    private static ArrayNode companions(VisitPlan visit) {
        ArrayNode companions = MAPPER.createArrayNode();
        for (Companion companion : visit.companions()) {
            Dose dose = companion.exercise().dose();
            ObjectNode node = companions.addObject();
            node.put("id", companion.exercise().id());
            node.put("title", companion.exercise().name().in(Language.EN));
            node.put("because", companion.because());
            node.put("repetitions", dose.repetitions());
            node.put("sets", dose.sets());
            node.put("sessionsPerDay", dose.sessionsPerDay());
            node.put("daysPerWeek", dose.daysPerWeek());
            dose.minutes().ifPresent(minutes -> node.put("minutes", minutes));
            node.put("basis", dose.basis());
        }
        return companions;
    }

    private static void addScreening(ObjectNode root, VisitPlan visit) {
        root.set("screening", MAPPER.valueToTree(ScreeningSummary.of(visit.screening())));
        root.set("cautions", MAPPER.valueToTree(visit.cautions()));
        root.set("model", MAPPER.valueToTree(visit.stamp()));
    }

    private static Optional<String> reasonOf(VisitPlan visit, String site) {
        return visit.sites().stream()
                .filter(given -> given.name().equals(site))
                .map(SiteWeight::reason)
                .findFirst();
    }
}
