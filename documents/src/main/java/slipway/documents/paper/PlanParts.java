package slipway.documents.paper;

import java.util.List;
import java.util.Optional;
import slipway.care.facts.Frame;
import slipway.care.visit.Companion;
import slipway.exercises.exercise.Dose;
import slipway.exercises.exercise.Language;
import slipway.exercises.unload.Advice;
import slipway.reasoning.deadlines.Deadline;
import slipway.reasoning.dose.DosedExercise;

/** What is planned, how often, by when papers are due. */
final class PlanParts {
    private final Writing out;
    private final PaperInput in;

    PlanParts(Writing out, PaperInput in) {
        this.out = out;
        this.in = in;
    }

    /** How often and for how long. */
    void dosage() {
        out.part("dosage");
        Frame.Dosage dosage = in.facts().frame().dosage();
        out.told("frequency", "label.frequency", whole(dosage.timesAWeek()), "episode/plan/timesAWeek");
        out.told("duration", "label.weeks", whole(dosage.weeks()), "episode/plan/weeks");
        out.told("ends", "label.ends", dosage.ends().map(Object::toString), "episode/plan/ends");
    }

    private static Optional<String> whole(java.util.OptionalInt value) {
        return value.isPresent() ? Optional.of(Integer.toString(value.getAsInt())) : Optional.empty();
    }

    /** Exercises with their doses and what to change in the day. */
    void exercises() {
        out.part("exercises");
        if (in.plan().stopped()) {
            out.say("stopped", out.words().get("exercises.stopped"), "case/screening");
            return;
        }
        // The doses below are those of the plan; a stop that was not released comes before them in every paper.
        in.followed()
                .flatMap(followed -> followed.state().lock())
                .ifPresent(decision ->
                        out.say("all-stopped", out.words().get("home.stopped", decision.key()), "episode/checkIns"));
        for (Advice advice : in.plan().unload()) {
            out.say(
                    "unload-" + advice.id(),
                    out.words().get("exercises.unload", advice.title().in(Language.EN)),
                    "case/history/habits");
        }
        for (DosedExercise dosed : in.plan().given()) {
            String id = dosed.range().candidate().id();
            out.say(
                    id,
                    out.words()
                            .get(
                                    "exercises.dose",
                                    name(id),
                                    dosed.range().candidate().position(),
                                    dosed.dose().repetitions(),
                                    dosed.dose().sets(),
                                    dosed.dose().sessionsPerDay()),
                    "plan/exercise/" + id);
        }
        for (Companion companion : in.plan().companions()) {
            out.say(
                    companion.exercise().id(),
                    out.words()
                            .get(
                                    "exercises.companion",
                                    companion.exercise().name().in(Language.EN),
                                    amount(companion.exercise().dose()),
                                    companion.because()),
                    "plan/companion/" + companion.exercise().id());
        }
        if (in.plan().given().isEmpty() && in.plan().companions().isEmpty()) {
            out.blank("none", "label.exercises", "plan");
        } else if (!in.plan().given().isEmpty()) {
            out.fixed("exercises.below");
        }
    }

    private String name(String id) {
        return in.plan().exercise(id).name().in(Language.EN);
    }

    private String amount(Dose dose) {
        return dose.minutes().isPresent()
                ? out.words().get("exercises.minutes", dose.minutes().getAsInt(), dose.sessionsPerDay())
                : out.words().get("exercises.repetitions", dose.repetitions(), dose.sets(), dose.sessionsPerDay());
    }

    void cautions() {
        out.part("cautions");
        List<String> cautions = in.plan().cautions();
        for (int i = 0; i < cautions.size(); i++) {
            out.say("caution-" + (i + 1), cautions.get(i), "plan/cautions");
        }
    }

    /** By when papers are due; none without terms of a payer. */
    void deadlines() {
        out.part("deadlines");
        for (Deadline due : in.facts().deadlines(in.day())) {
            out.say(
                    due.kind().name(),
                    out.words().get("deadlines.state." + due.state().name(), due.text()),
                    "episode/visits",
                    "episode/payer");
        }
    }

    /** What comes next, as written at the last visit. */
    void next() {
        out.part("next");
        out.told(
                "next",
                "label.next",
                in.lastVisit().flatMap(visit -> visit.notes().next()),
                in.lastVisit().map(visit -> "visit/" + visit.number()).orElse("episode/visits"));
    }
}
