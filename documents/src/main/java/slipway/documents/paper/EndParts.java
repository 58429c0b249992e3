package slipway.documents.paper;

import java.util.List;
import java.util.Optional;
import slipway.care.follow.FollowPlans;
import slipway.documents.letter.ReferralLetter;
import slipway.documents.sheet.HomeSheet;
import slipway.documents.visit.LetterOfVisit;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.course.CourseReport;
import slipway.reasoning.course.Discharge;
import slipway.reasoning.response.ladder.Ladder;
import slipway.reasoning.response.propose.FollowedExercise;

/** Sending on, ending care, and what the person does if it comes back. */
final class EndParts {
    private final Writing out;
    private final PaperInput in;

    EndParts(Writing out, PaperInput in) {
        this.out = out;
        this.in = in;
    }

    /**
     * What was found and what is asked of the reader.
     *
     * @throws IllegalArgumentException if the screening found nothing to refer for
     */
    void referral() {
        if (!LetterOfVisit.needed(in.plan())) {
            throw new IllegalArgumentException("the screening found nothing to refer for");
        }
        ReferralLetter letter = LetterOfVisit.of(in.plan(), Language.EN, in.day());
        out.part("urgency");
        out.fixed("urgency." + letter.urgency().name());
        out.part("found");
        for (int i = 0; i < letter.found().size(); i++) {
            ReferralLetter.Finding finding = letter.found().get(i);
            out.say(
                    "finding-" + (i + 1),
                    finding.basis().isEmpty()
                            ? finding.what()
                            : out.words().get("found.basis", finding.what(), finding.basis()),
                    "case/screening");
        }
        for (int i = 0; i < letter.notes().size(); i++) {
            out.say("note-" + (i + 1), letter.notes().get(i), "case");
        }
        out.part("givenSoFar");
        out.say("none", String.join(" ", letter.done()), "plan");
        out.part("asked");
        out.fixed("asked.clearance");
        out.fixed("screening.limits");
    }

    /** What is missing for an end of care, or that nothing is. */
    void discharge() {
        out.part("ending");
        Optional<Discharge> discharge = in.course().map(CourseReport::discharge);
        if (discharge.isEmpty()) {
            out.blank("none", "label.course", "episode/visits");
            return;
        }
        if (discharge.get().ready()) {
            out.say("ready", out.words().get("ending.ready"), "episode/goals", "episode/alone", "episode/relapse");
        }
        List<String> missing = discharge.get().missing();
        for (int i = 0; i < missing.size(); i++) {
            out.say(
                    "missing-" + (i + 1),
                    out.words().get("ending.missing", missing.get(i)),
                    "episode/goals",
                    "episode/alone",
                    "episode/relapse");
        }
    }

    /** Whether the person has a plan for a relapse, and what it says. */
    void relapseInShort() {
        out.part("relapse");
        in.facts()
                .ending()
                .relapsePlan()
                .ifPresentOrElse(
                        plan -> out.say("plan", String.join(" ", plan.sentences()), "episode/relapse"),
                        () -> out.blank("plan", "label.relapse", "episode/relapse"));
    }

    /**
     * The sheet for the person: start again at a rung with its dose, when to call, the emergency signs.
     *
     * @throws IllegalArgumentException if there is no plan for a relapse or no exercise to start again with
     */
    void relapseForThePerson() {
        Discharge.RelapsePlan plan = in.facts()
                .ending()
                .relapsePlan()
                .orElseThrow(() -> new IllegalArgumentException("no plan for a relapse was recorded"));
        if (in.plan().given().isEmpty()) {
            throw new IllegalArgumentException("the plan gives no exercise to start again with");
        }
        out.part("comesBack");
        out.fixed("comesBack.common");
        out.fixed("comesBack.rest");
        out.part("again");
        for (FollowedExercise exercise : FollowPlans.of(in.plan()).exercises()) {
            // The rung to start again on is one of a glide; companions go on as they were given.
            if (!exercise.companion()) {
                again(exercise, plan.restartRung());
            }
        }
        out.fixed("again.more");
        out.part("call");
        for (int i = 0; i < plan.callIf().size(); i++) {
            out.say("if-" + (i + 1), out.words().get("call.if", plan.callIf().get(i)), "episode/relapse/callIf/" + i);
        }
        in.facts()
                .file()
                .episode()
                .clinic()
                .phone()
                .ifPresentOrElse(
                        phone -> out.say("phone", out.words().get("call.phone", phone), "case/clinic/phone"),
                        () -> out.blank("phone", "label.phone", "case/clinic/phone"));
        Words sheet = Words.beside(HomeSheet.class, out.words().language());
        out.say("closed", sheet.get("call.closed"), "text");
        emergency(sheet);
    }

    /** The dose of the rung; never above what the therapist allowed, even if the plan names a higher rung. */
    private void again(FollowedExercise exercise, int restartRung) {
        Ladder ladder = exercise.ladder();
        int rung = Math.min(restartRung - 1, ladder.start());
        var dose = ladder.dose(rung);
        out.say(
                exercise.id(),
                out.words()
                        .get(
                                "again.dose",
                                in.plan()
                                        .exercise(exercise.id())
                                        .name()
                                        .in(out.words().language()),
                                out.words().counted("again.times", dose.repetitions()),
                                out.words().counted("again.day", dose.sessionsPerDay()),
                                dose.rangeFraction() < 1 ? out.words().get("again.lessFar") : ""),
                "episode/relapse/restartRung",
                "plan/exercise/" + exercise.id());
    }

    /** The same signs and words as on the sheet for home. */
    private void emergency(Words sheet) {
        out.part("emergency");
        String number = in.facts().file().episode().clinic().emergencyNumber();
        out.say("intro", sheet.get("emergency.intro", number), "case/clinic/emergencyNumber");
        List<String> signs = sheet.list("emergency.sign");
        for (int i = 0; i < signs.size(); i++) {
            out.say("sign-" + (i + 1), signs.get(i), "text");
        }
    }
}
