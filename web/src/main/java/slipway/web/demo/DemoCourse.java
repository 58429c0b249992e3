package slipway.web.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanDraft;
import slipway.care.record.chart.PlanState;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.chart.TryEntry;
import slipway.care.record.chart.Verdict;
import slipway.care.record.chart.VisitRecord;
import slipway.care.visit.VisitPlan;
import slipway.web.episode.Cases;
import slipway.web.episode.attempt.Sheets;
import slipway.web.episode.plan.PlanDrafts;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Writes an invented course into the record of an invented person, through the same doors as the pages. */
final class DemoCourse {
    /** Worst symptom of each day in a course that eases; invented. */
    private static final int[] EASING = {4, 4, 5, 3, 4, 3, 3, 2, 2};

    private static final int[] SETTLING_MINUTES = {15, 12, 35, 10, 10, 8, 5, 3, 2};

    private final Records records;
    private final Cases cases;
    private final Sheets sheets;

    DemoCourse(Records records, Cases cases, Sheets sheets) {
        this.records = records;
        this.cases = cases;
        this.sheets = sheets;
    }

    private Chart chart(String episodeId, Act act) {
        return records.charts().open(episodeId, act).chartIfOpen().orElseThrow();
    }

    /** Takes the plan of what is recorded, tries every exercise of it and gives it to the person. */
    void release(String episodeId, Act act) {
        Chart first = chart(episodeId, act);
        Assembly.Complete whole = cases.assemble(first).complete().orElseThrow();
        VisitPlan visit = cases.visit(whole);
        List<String> ids = visit.given().stream()
                .map(dosed -> dosed.range().candidate().id())
                .toList();
        PlanDraft draft = PlanDrafts.of(cases, first, whole, PlanDrafts.usualCeilings(visit));
        give(
                first,
                draft,
                ids,
                act,
                (later, plan) -> sheets.make(
                        later,
                        plan,
                        visit,
                        ids,
                        Sheets.Choice.read(later.person().details().language().code(), "a4", "normal")
                                .orElseThrow()));
    }

    /**
     * The same for somebody with the findings of somebody else, whose plan is taken over: computing it takes more than a
     * second. Sheet and guide are left to be made.
     */
    void releaseLike(Chart other, String episodeId, Act act) {
        Chart first = chart(episodeId, act);
        Assembly.Complete whole = cases.assemble(first).complete().orElseThrow();
        PlanDraft known = other.plans().list().get(0).plan();
        List<String> ids = other.visits().tries().stream()
                .map(made -> made.entry().exerciseId())
                .toList();
        var draft = new PlanDraft(
                whole.text(),
                cases.inputs(first, whole.text()),
                known.stamp(),
                known.body().put("caseId", whole.file().id()),
                known.ceilings(),
                known.home());
        give(first, draft, ids, act, (later, plan) -> {});
    }

    /** One visit: the plan is accepted, every exercise tried, what is handed over made, and the person goes home. */
    private void give(
            Chart first, PlanDraft draft, List<String> ids, Act act, BiConsumer<Chart, PlanVersion> handedOver) {
        String episodeId = first.episode().id();
        VisitRecord seen = first.visits().start();
        PlanVersion plan = accepted(first, draft);
        Chart later = chart(episodeId, act.at(act.at().plus(25, ChronoUnit.MINUTES)));
        tryAll(later, seen, plan, ids);
        later.plans().move(plan.number(), PlanState.ACCEPTED, PlanState.RELEASED);
        handedOver.accept(later, plan);
        chart(episodeId, act.at(act.at().plus(40, ChronoUnit.MINUTES))).visits().end(seen.id(), seen.version());
    }

    private static PlanVersion accepted(Chart chart, PlanDraft draft) {
        PlanVersion plan = chart.plans().add(draft);
        chart.plans().move(plan.number(), PlanState.PROPOSED, PlanState.ACCEPTED);
        chart.decisions().add("plan/" + plan.number(), Verdict.ACCEPT, "", "", "");
        return plan;
    }

    private static void tryAll(Chart chart, VisitRecord seen, PlanVersion plan, List<String> exerciseIds) {
        for (String id : exerciseIds) {
            var entry = new TryEntry(
                    id, 5, 2, OptionalDouble.of(1), OptionalDouble.empty(), Optional.of(false), true, Optional.empty());
            chart.visits().addTry(seen.id(), plan.number(), entry);
        }
    }

    /** A check-in a day until a day before now, easing. */
    void easing(String episodeId, String exerciseId, Act now) {
        for (int day = 0; day < EASING.length; day++) {
            Instant at = now.at().minus(Duration.ofDays(EASING.length - day));
            report(episodeId, exerciseId, now.at(at), EASING[day], SETTLING_MINUTES[day]);
        }
    }

    /** A check-in in which nothing special happened. */
    void report(String episodeId, String exerciseId, Act act, int worst, int settleMinutes) {
        checkIn(episodeId, act, body(exerciseId, act.at(), worst).put("settle_minutes", String.valueOf(settleMinutes)));
    }

    /** One check-in that tells of new weakness, with its alert. */
    void newWeakness(String episodeId, String exerciseId, Act act, String words) {
        String id = checkIn(
                episodeId,
                act,
                body(exerciseId, act.at(), 6).put("settle_minutes", "60").put("new_weakness", "yes"));
        chart(episodeId, act).checkIns().raise("new-weakness", words, Optional.of(id), act.userId());
    }

    /** The first exercise that the person has at home. */
    String firstAtHome(String episodeId, Act act) {
        return chart(episodeId, act).visits().tries().get(0).entry().exerciseId();
    }

    private String checkIn(String episodeId, Act act, ObjectNode body) {
        String session = "demo-" + act.at().getEpochSecond() + "-" + episodeId.substring(0, 6);
        String id = session + "-1";
        body.put("checkin_id", id).put("session_id", session);
        chart(episodeId, act).checkIns().add(id, session, body.path("exercise").asString(), body);
        return id;
    }

    private static ObjectNode body(String exerciseId, Instant at, int worst) {
        OffsetDateTime started =
                at.minus(Duration.ofMinutes(10)).atOffset(ZoneOffset.UTC).truncatedTo(ChronoUnit.SECONDS);
        return JsonMapper.shared()
                .createObjectNode()
                .put("exercise", exerciseId)
                .put("started_at", started.toString())
                .put("before", "2")
                .put("repetitions_done", "6")
                .put("worst", String.valueOf(worst))
                .put("kind", "tingling")
                .put("still_numb", "no")
                .put("new_weakness", "no")
                .put("emergency", "no")
                .put("reported_at", started.plusMinutes(10).toString());
    }
}
