package slipway.exchange.fhir;

import java.util.Optional;
import org.hl7.fhir.r4.model.Coding;
import org.hl7.fhir.r4.model.Duration;
import org.hl7.fhir.r4.model.Encounter;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.Procedure;
import slipway.care.facts.Treatment;
import slipway.care.record.chart.TryEntry;
import slipway.reasoning.billing.TimedService;

/** Visits, what was done in them, and what was tried. */
final class VisitResources {
    private final Writer out;
    private final Export export;

    VisitResources(Writer out, Export export) {
        this.out = out;
        this.export = export;
    }

    void write() {
        export.facts().visitsUpTo(export.day()).forEach(this::visit);
    }

    private void visit(Treatment visit) {
        String name = "visit/" + visit.number();
        var encounter = new Encounter();
        encounter
                .setStatus(Encounter.EncounterStatus.FINISHED)
                .setClass_(new Coding("http://terminology.hl7.org/CodeSystem/v3-ActCode", "AMB", "ambulatory"))
                .setSubject(out.to(FrameResources.PATIENT))
                .addEpisodeOfCare(out.to(FrameResources.EPISODE));
        encounter.getPeriod().setStartElement(Writer.dateTime(visit.day())).setEndElement(Writer.dateTime(visit.day()));
        encounter.setServiceProvider(out.to(FrameResources.CLINIC));
        visit.by().ifPresent(by -> encounter.addParticipant().getIndividual().setDisplay(by));
        if (visit.untimedMinutes().isPresent()) {
            encounter.setLength(
                    minutes(visit.timedMinutes() + visit.untimedMinutes().getAsInt()));
        }
        out.add(name, encounter, "Visit %d on %s".formatted(visit.number(), visit.day()));
        for (int i = 0; i < visit.services().size(); i++) {
            service(visit, i, visit.services().get(i));
        }
        for (int i = 0; i < visit.tries().size(); i++) {
            attempt(visit, i, visit.tries().get(i));
        }
    }

    private static Duration minutes(int minutes) {
        var length = new Duration();
        length.setValue(minutes).setSystem(Units.SYSTEM).setCode("min").setUnit("minutes");
        return length;
    }

    /** A service by the name that the clinic gave it, and its minutes. */
    private void service(Treatment visit, int index, TimedService service) {
        String name = "visit/%d/service/%d".formatted(visit.number(), index);
        var procedure = new Procedure();
        procedure
                .setStatus(Procedure.ProcedureStatus.COMPLETED)
                .setSubject(out.to(FrameResources.PATIENT))
                .setEncounter(out.to("visit/" + visit.number()))
                .setPerformed(Writer.dateTime(visit.day()));
        procedure.getCode().setText("Timed service " + service.name());
        visit.by().ifPresent(by -> procedure.addPerformer().getActor().setDisplay(by));
        out.add(name, procedure, "Timed service " + service.name());
        Observation time = Observations.begun(
                out,
                export,
                "procedure",
                Codes.own("service-minutes", "Direct one-on-one minutes"),
                Optional.of(visit.day()));
        time.setValue(Units.of(service.minutes(), "min"));
        time.addPartOf(out.to(name));
        time.setEncounter(out.to("visit/" + visit.number()));
        out.add(name + "/minutes", time, service.minutes() + " minutes");
    }

    private void attempt(Treatment visit, int index, TryEntry entry) {
        Observation tried = Observations.begun(
                out,
                export,
                "therapy",
                Codes.own(
                        "try-" + entry.exerciseId(),
                        "Supervised set, " + entry.exerciseId().replace('-', ' ')),
                Optional.of(visit.day()));
        tried.setEncounter(out.to("visit/" + visit.number()));
        tried.setValue(Units.points(entry.worst()));
        tried.addComponent()
                .setCode(Codes.own("repetitions", "Repetitions done"))
                .setValue(Units.count(entry.repetitions(), "repetitions"));
        entry.settleMinutes()
                .ifPresent(settle -> tried.addComponent()
                        .setCode(Codes.own("settle", "Time to settle"))
                        .setValue(Units.of(settle, "min")));
        entry.retestOnsetDeg()
                .ifPresent(deg -> tried.addComponent()
                        .setCode(Codes.own("retest-onset", "Onset in the re-test"))
                        .setValue(Units.of(deg, "deg")));
        out.add("visit/%d/try/%d".formatted(visit.number(), index), tried, "Supervised set");
    }
}
