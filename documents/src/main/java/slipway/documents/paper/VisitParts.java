package slipway.documents.paper;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slipway.care.facts.Taken;
import slipway.care.facts.Treatment;
import slipway.care.record.chart.TryEntry;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.reasoning.billing.Allocation;
import slipway.reasoning.billing.TimeUnits;
import slipway.reasoning.measures.Numbers;

/** One visit: what was told, done, measured; time and units. */
final class VisitParts {
    private final Writing out;
    private final PaperInput in;
    private final Treatment visit;
    private final String source;

    VisitParts(Writing out, PaperInput in, Treatment visit) {
        this.out = out;
        this.in = in;
        this.visit = visit;
        this.source = "visit/" + visit.number();
    }

    void told() {
        out.part("visit");
        out.say("day", out.words().get("visit.day", visit.number(), visit.day()), source);
        out.told("by", "label.by", visit.by(), source);
        out.told("told", "label.told", visit.notes().told(), source);
    }

    void done() {
        out.part("done");
        out.told("done", "label.done", visit.notes().done(), source);
        for (int i = 0; i < visit.tries().size(); i++) {
            out.say("try-" + (i + 1), tried(visit.tries().get(i)), source + "/tries/" + i);
        }
        out.told("response", "label.response", visit.notes().response(), source);
    }

    private String tried(TryEntry entry) {
        var text = new StringBuilder(out.words()
                .get(
                        "visit.tried",
                        name(entry.exerciseId()),
                        entry.repetitions(),
                        Numbers.text(entry.worst()),
                        entry.settleMinutes().isPresent()
                                ? out.words()
                                        .get(
                                                "visit.settled",
                                                Numbers.text(
                                                        entry.settleMinutes().getAsDouble()))
                                : out.words().get("visit.settledUnknown")));
        entry.retestOnsetDeg()
                .ifPresent(deg -> text.append(' ').append(out.words().get("visit.retest", Numbers.text(deg))));
        entry.retestWeaker()
                .ifPresent(weaker ->
                        text.append(' ').append(out.words().get(weaker ? "visit.weaker" : "visit.notWeaker")));
        text.append(' ').append(out.words().get(entry.released() ? "visit.released" : "visit.notReleased"));
        entry.remark().ifPresent(remark -> text.append(' ').append(remark));
        return text.toString();
    }

    private String name(String id) {
        Exercise known = in.plan().exercises().get(id);
        return known == null ? id : known.name().in(Language.EN);
    }

    /** Scores of the day. */
    void measured() {
        out.part("measures");
        List<Taken> today = in.facts().scores().stream()
                .filter(taken -> taken.day().equals(visit.day()))
                .toList();
        if (today.isEmpty()) {
            out.blank("none", "label.measures", "episode/measures");
        }
        for (int i = 0; i < today.size(); i++) {
            Taken taken = today.get(i);
            String text = taken.score()
                    .map(score -> out.words()
                            .get(
                                    "measures.score",
                                    taken.measure().name(),
                                    taken.measure().text(score),
                                    taken.day()))
                    .orElse(out.words().get("measures.noScore", taken.measure().name(), taken.day()));
            out.say("score-" + (i + 1), text, "measure/" + taken.measure().id());
        }
    }

    /** Minutes; units only if the payer's rule is set, ties shown. */
    void time() {
        out.part("time");
        if (visit.services().isEmpty()) {
            out.blank("timed", "label.timed", source + "/services");
        } else {
            String list = visit.services().stream()
                    .map(service -> service.name() + " " + service.minutes())
                    .collect(Collectors.joining(", "));
            out.say("timed", out.words().get("time.timed", visit.timedMinutes(), list), source + "/services");
        }
        Optional<String> total = visit.untimedMinutes().isPresent()
                ? Optional.of(out.words()
                        .get(
                                "time.minutes",
                                visit.timedMinutes() + visit.untimedMinutes().getAsInt()))
                : Optional.empty();
        out.told("total", "label.total", total, source + "/untimedMinutes");
        if (in.unitRule().isPresent() && !visit.services().isEmpty()) {
            units(TimeUnits.allocate(in.unitRule().get(), visit.services()));
        }
    }

    private void units(Allocation allocation) {
        String lines = allocation.lines().stream()
                .map(line -> line.service().name() + " " + line.units())
                .collect(Collectors.joining(", "));
        out.say(
                "units",
                out.words()
                        .get(
                                "time.units",
                                allocation.units(),
                                lines,
                                allocation.rule().words()),
                source + "/services");
        allocation
                .tie()
                .ifPresent(tie -> out.say(
                        "tie",
                        out.words().get("time.tie", String.join(", ", tie.among()), tie.units()),
                        source + "/services"));
    }
}
