package slipway.web.episode.plan;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipway.care.casefile.CaseFiles;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanDraft;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.chart.Stamp;
import slipway.care.visit.VisitPlan;
import slipway.documents.visit.PlanJson;
import slipway.web.episode.Cases;
import slipway.web.shell.Numbers;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Plans as they are kept, and kept plans beside those of now. */
public final class PlanDrafts {
    private PlanDrafts() {}

    /** A plan as it is kept, with the most that the therapist allows. */
    public static PlanDraft of(Cases cases, Chart chart, Assembly.Complete whole, ObjectNode ceilings) {
        VisitPlan visit = cases.visit(whole);
        return new PlanDraft(
                whole.text(),
                cases.inputs(chart, whole.text()),
                new Stamp(visit.stamp().version(), visit.stamp().parametersSha256()),
                body(visit),
                ceilings,
                HomePlans.kept(visit));
    }

    /** What is allowed at most when the therapist changes nothing. */
    public static ObjectNode usualCeilings(VisitPlan visit) {
        return Ceilings.read(Map.of(), visit).content();
    }

    /** The visit of a kept plan, computed from its inputs by the program of now. */
    public static VisitPlan visit(Cases cases, PlanVersion version) {
        String text = version.plan().inputs();
        return cases.visit(new Assembly.Complete(CaseFiles.read(text.getBytes(StandardCharsets.UTF_8), "plan"), text));
    }

    private static ObjectNode body(VisitPlan visit) {
        return (ObjectNode) JsonMapper.shared().readTree(PlanJson.of(visit));
    }

    /**
     * One exercise of a kept plan beside the same of now.
     *
     * @param was as it was kept, in words; blank if it was not given
     * @param again from the same inputs with the program of now; blank if it would not be given
     * @param now from what is recorded now; blank if it would not be given
     */
    public record Row(String exercise, String was, String again, String now) {
        /** Whether the program of now says something else of the same inputs. */
        public boolean programDiffers() {
            return !was.equals(again);
        }

        /** Whether what is recorded now gives something else than the same inputs. */
        public boolean inputsDiffer() {
            return !again.equals(now);
        }
    }

    /**
     * All exercises of a kept plan and of those of now.
     *
     * @param recorded what is recorded now; empty if that is no whole case
     */
    static List<Row> compare(Cases cases, PlanVersion version, Optional<Assembly.Complete> recorded) {
        JsonNode was = exercises(version.plan().body());
        JsonNode again = exercises(body(visit(cases, version)));
        JsonNode now = exercises(recorded.map(whole -> body(cases.visit(whole)))
                .orElseGet(() -> JsonMapper.shared().createObjectNode()));
        Set<String> ids = new LinkedHashSet<>();
        List.of(was, again, now)
                .forEach(list -> list.forEach(each -> ids.add(each.path("id").asString())));
        var rows = new ArrayList<Row>();
        ids.forEach(id -> rows.add(new Row(id, words(was, id), words(again, id), words(now, id))));
        return rows;
    }

    private static JsonNode exercises(JsonNode body) {
        return body.path("plan").path("exercises");
    }

    private static String words(JsonNode exercises, String id) {
        for (JsonNode exercise : exercises) {
            if (exercise.path("id").asString().equals(id)) {
                var ranges = new ArrayList<String>();
                exercise.path("ranges")
                        .forEach(range -> ranges.add("%s %s° to %s°"
                                .formatted(
                                        range.path("joint").asString(),
                                        Numbers.plain(range.path("fromDeg").asDouble()),
                                        Numbers.plain(range.path("toDeg").asDouble()))));
                return "%s; %d × %d, %d a day; peak load %s %%"
                        .formatted(
                                String.join(", ", ranges),
                                exercise.path("repetitions").asInt(),
                                exercise.path("sets").asInt(),
                                exercise.path("sessionsPerDay").asInt(),
                                Numbers.one(exercise.path("peakLoadPct")
                                        .path("median")
                                        .asDouble()));
            }
        }
        return "";
    }
}
