package slipway.documents.paper;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipway.care.facts.Taken;
import slipway.care.facts.Treatment;
import slipway.reasoning.course.CourseReport;
import slipway.reasoning.course.GoalCheck;
import slipway.reasoning.course.GoalDraft;
import slipway.reasoning.course.MeasureCourse;
import slipway.reasoning.course.Milestone;
import slipway.reasoning.course.Outlook;

/** Scores, goals, what was reported from home, and where the care stands. */
final class CourseParts {
    private final Writing out;
    private final PaperInput in;

    CourseParts(Writing out, PaperInput in) {
        this.out = out;
        this.in = in;
    }

    /** The time that the paper covers. */
    void period() {
        out.part("period");
        Optional<LocalDate> from = in.periodStart();
        if (from.isEmpty()) {
            out.blank("days", "label.period", "episode/visits");
            return;
        }
        long seen = in.visits().stream()
                .filter(visit -> !visit.day().isBefore(from.get()))
                .count();
        out.say(
                "days",
                out.words()
                        .get(
                                "period.days",
                                from.get(),
                                in.day(),
                                seen,
                                in.visits().size()),
                "episode/visits");
    }

    /** The whole time of care. */
    void wholePeriod() {
        out.part("period");
        Optional<LocalDate> from = in.facts().start();
        if (from.isEmpty()) {
            out.blank("days", "label.period", "episode/visits");
        } else {
            out.say(
                    "days",
                    out.words()
                            .get(
                                    "period.whole",
                                    from.get(),
                                    in.day(),
                                    in.visits().size()),
                    "episode/visits");
        }
    }

    /** What the person said in the visits of the period. */
    void statements() {
        out.part("statements");
        List<Treatment> told = in.visits().stream()
                .filter(visit -> visit.notes().told().isPresent())
                .filter(visit -> in.periodStart()
                        .filter(from -> visit.day().isBefore(from))
                        .isEmpty())
                .toList();
        if (told.isEmpty()) {
            out.blank("none", "label.statements", "episode/visits");
        }
        for (Treatment visit : told) {
            out.say(
                    "visit-" + visit.number(),
                    out.words()
                            .get(
                                    "statements.told",
                                    visit.day(),
                                    visit.notes().told().orElse("")),
                    "visit/" + visit.number());
        }
    }

    /** First scores; for the evaluation. */
    void baseline() {
        out.part("measures");
        List<Taken> first = in.facts().scores().stream()
                .filter(taken -> !taken.day().isAfter(in.day()))
                .toList();
        if (first.isEmpty()) {
            out.blank("none", "label.measures", "episode/measures");
        }
        for (int i = 0; i < first.size(); i++) {
            Taken taken = first.get(i);
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

    /** Each measure with its change; improvement is said to have come during care. */
    void measures() {
        out.part("measures");
        List<MeasureCourse> measures = in.course().map(CourseReport::measures).orElse(List.of());
        if (measures.isEmpty()) {
            out.blank("none", "label.measures", "episode/measures");
            return;
        }
        boolean better = false;
        for (MeasureCourse course : measures) {
            String id = course.measure().id();
            out.say(id, course.sentence(), "measure/" + id);
            if (course.trend().isPresent()) {
                out.say(id + "-trend", course.trendSentence(), "measure/" + id);
            }
            better |= course.change().filter(change -> change.better()).isPresent();
        }
        if (better) {
            String improved = String.join(
                    ", ",
                    measures.stream()
                            .filter(each -> each.change()
                                    .filter(change -> change.better())
                                    .isPresent())
                            .map(each -> each.measure().name())
                            .toList());
            out.say("during", out.words().get("measures.during", improved), "episode/measures");
        }
    }

    /** The goals, also those that say too little, with what is missing. */
    void goals() {
        out.part("goals");
        if (in.facts().goals().isEmpty()) {
            out.blank("none", "label.goals", "episode/goals");
        }
        LocalDate written = in.facts().start().orElse(in.day());
        for (GoalDraft draft : in.facts().goals()) {
            var verdict = GoalCheck.of(draft, written);
            String source = "goal/" + draft.id();
            if (verdict.goal().isPresent()) {
                out.say(draft.id(), verdict.goal().get().sentence(), source);
            } else {
                String flaws = String.join(
                        "; ",
                        verdict.flaws().stream()
                                .filter(flaw -> !flaw.kind().hint())
                                .map(GoalCheck.Flaw::text)
                                .toList());
                String activity = draft.activity().isBlank() ? draft.id() : draft.activity();
                out.say(draft.id(), out.words().get("goals.incomplete", activity, flaws), source);
            }
        }
    }

    /** How each goal stands. */
    void outlooks() {
        for (Outlook outlook : in.course().map(CourseReport::goals).orElse(List.of())) {
            String id = outlook.goal().id();
            out.say(
                    id + "-stands",
                    out.words().get("goals.stands", outlook.goal().activity(), outlook.text()),
                    "goal/" + id,
                    "measure/" + outlook.goal().measure().id());
        }
    }

    /** What the weeks of care ask for; proposals, the therapist decides. */
    void standing() {
        out.part("standing");
        if (in.course().isEmpty()) {
            out.blank("none", "label.course", "episode/visits");
            return;
        }
        CourseReport report = in.course().get();
        out.say("week", out.words().get("standing.week", report.week()), "episode/visits");
        out.say("stall", report.stall().text(), "episode/measures", "episode/goals");
        for (Milestone due : report.milestones()) {
            out.say(
                    "week-" + due.week() + "-" + due.action().ordinal(),
                    out.words()
                            .get(
                                    "standing.due",
                                    due.reason().text(),
                                    due.action().words()),
                    "episode/measures");
        }
    }
}
