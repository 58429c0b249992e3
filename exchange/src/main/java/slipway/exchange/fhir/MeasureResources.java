package slipway.exchange.fhir;

import java.time.OffsetDateTime;
import java.util.Date;
import java.util.Optional;
import org.hl7.fhir.r4.model.BooleanType;
import org.hl7.fhir.r4.model.DateTimeType;
import org.hl7.fhir.r4.model.DecimalType;
import org.hl7.fhir.r4.model.IntegerType;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.QuestionnaireResponse;
import org.hl7.fhir.r4.model.StringType;
import org.hl7.fhir.r4.model.Type;
import slipway.care.facts.Taken;
import slipway.reasoning.response.checkin.CheckIn;

/** Scores as observations, answers and reports from home as questionnaire responses. */
final class MeasureResources {
    /** Address of the questionnaire that a report from home answers; it ships with the program. */
    static final String CHECK_IN = "urn:slipway:fhir:questionnaire:check-in";

    static final String CODE_PREFIX = "measure-";

    private final Writer out;
    private final Export export;

    MeasureResources(Writer out, Export export) {
        this.out = out;
        this.export = export;
    }

    void write() {
        var scores = export.facts().scores();
        for (int i = 0; i < scores.size(); i++) {
            score(name(scores.get(i), i), scores.get(i));
        }
        export.facts().checkIns().forEach(this::checkIn);
    }

    /** Several scores of one day and measure are told apart by their place. */
    private String name(Taken taken, int index) {
        String name = "score/%s/%s".formatted(taken.measure().id(), taken.day());
        return out.has(name) ? name + "/" + index : name;
    }

    private void score(String name, Taken taken) {
        Observation observation = Observations.begun(
                out,
                export,
                taken.measure().id().equals("slr") ? "exam" : "survey",
                Codes.own(CODE_PREFIX + taken.measure().id(), taken.measure().name()),
                Optional.of(taken.day()));
        Optional<Double> score = taken.score();
        if (score.isPresent()) {
            observation.setValue(Units.score(taken.measure(), score.get()));
        } else {
            observation.setDataAbsentReason(Codes.of(
                    "http://terminology.hl7.org/CodeSystem/data-absent-reason", "not-performed", "Not Performed"));
        }
        if (!taken.answers().isEmpty()) {
            answers(name + "/answers", taken);
            observation.addDerivedFrom(out.to(name + "/answers"));
        }
        String text = score.map(value -> taken.measure().text(value)).orElse("no score");
        out.add(name, observation, "%s: %s".formatted(taken.measure().name(), text));
    }

    private QuestionnaireResponse begun() {
        var response = new QuestionnaireResponse();
        return response.setStatus(QuestionnaireResponse.QuestionnaireResponseStatus.COMPLETED)
                .setSubject(out.to(FrameResources.PATIENT));
    }

    /** By number of the item; the wording may belong to somebody. */
    private void answers(String name, Taken taken) {
        QuestionnaireResponse response = begun();
        response.setAuthoredElement(Writer.dateTime(taken.day()));
        taken.answers()
                .forEach((item, value) -> response.addItem()
                        .setLinkId(taken.measure().id() + "-" + item)
                        .addAnswer()
                        .setValue(new DecimalType(Units.decimal(value))));
        out.add(name, response, "Answers, " + taken.measure().name());
    }

    private void checkIn(CheckIn report) {
        QuestionnaireResponse response = begun();
        response.setQuestionnaire(CHECK_IN)
                .setAuthored(Date.from(report.reportedAt().toInstant()));
        response.setSource(out.to(FrameResources.PATIENT));
        response.getIdentifier().setSystem("urn:slipway:check-in").setValue(report.id());
        item(response, "session_id", new StringType(report.sessionId()));
        item(response, "exercise", new StringType(report.exercise()));
        item(response, "started_at", time(report.startedAt()));
        report.before().ifPresent(value -> item(response, "before", new IntegerType(value)));
        report.repetitionsDone().ifPresent(value -> item(response, "repetitions_done", new IntegerType(value)));
        report.worst().ifPresent(value -> item(response, "worst", new IntegerType(value)));
        report.kind().ifPresent(kind -> item(response, "kind", new StringType(kind.key())));
        report.usualPain().ifPresent(usual -> item(response, "usual_pain", new BooleanType(usual)));
        report.reach().ifPresent(reach -> item(response, "reach", new StringType(reach.key())));
        report.settleMinutes().ifPresent(minutes -> settle(response, minutes));
        report.nextMorning().ifPresent(morning -> item(response, "next_morning", new StringType(morning.key())));
        item(response, "still_numb", new BooleanType(report.stillNumb()));
        item(response, "new_weakness", new BooleanType(report.newWeakness()));
        item(response, "emergency", new StringType(report.emergency().key()));
        report.flareExercise().ifPresent(id -> item(response, "flare_exercise", new StringType(id)));
        out.add("check-in/" + report.id(), response, "Report from home on one session");
    }

    private static void settle(QuestionnaireResponse response, double minutes) {
        if (Double.isInfinite(minutes)) {
            item(response, "not_settled", new BooleanType(true));
        } else {
            item(response, "settle_minutes", new DecimalType(Units.decimal(minutes)));
        }
    }

    private static void item(QuestionnaireResponse response, String linkId, Type value) {
        response.addItem().setLinkId(linkId).addAnswer().setValue(value);
    }

    private static DateTimeType time(OffsetDateTime at) {
        return new DateTimeType(Date.from(at.toInstant()));
    }
}
