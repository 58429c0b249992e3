package slipway.documents.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import slipway.care.visit.Companion;
import slipway.care.visit.VisitPlan;
import slipway.exercises.exercise.Dose;
import slipway.exercises.exercise.Exclusion;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.exercises.unload.Advice;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.dose.Refusal;
import slipway.reasoning.dose.StartRule;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.plan.CarePlan;
import slipway.reasoning.plan.JointRange;
import slipway.reasoning.plan.PlanResult;
import slipway.reasoning.plan.PlannedExercise;
import slipway.reasoning.plan.SiteShare;
import slipway.reasoning.screening.Match;
import slipway.reasoning.tolerance.Interval;
import slipway.reasoning.tolerance.SiteTolerance;
import slipway.reasoning.tolerance.ToleranceReport;

/** The plan as text for the therapist, with the basis of each number. */
public final class PlanText {
    private static final int WIDTH = 100;

    private final VisitPlan visit;
    private final StringBuilder out = new StringBuilder();

    private PlanText(VisitPlan visit) {
        this.visit = visit;
    }

    /** The whole text, ending in a new line. */
    public static String of(VisitPlan visit) {
        return new PlanText(visit).write();
    }

    private String write() {
        var file = visit.file();
        line("PLAN FOR CASE " + file.id()
                + (file.provenance().invented() ? " (invented)" : "")
                + ", " + file.episode().side().name().toLowerCase(Locale.ROOT) + " leg");
        screening();
        visit.result().ifPresent(this::plan);
        cautions();
        model();
        return out.toString();
    }

    private void plan(PlanResult result) {
        CarePlan plan = result.plan();
        sites(plan.sites());
        tolerance(plan.tolerance());
        reasons(
                "IRRITABILITY: " + plan.irritability().level().key(),
                plan.irritability().reasons());
        unload();
        exercises(
                plan.irritability().level(),
                plan.plan().exercises(),
                result.dose().notes());
        companions();
        byReason("NOT GIVEN", plan.plan().refused());
        byReason("RUNNERS-UP, looked at but not chosen", visit.runnersUp());
    }

    private void screening() {
        heading("SCREENING: " + visit.screening().level().key());
        for (Match match : visit.screening().matched()) {
            String cleared = match.clearance()
                    .map(c -> " Cleared by " + c.who() + ", " + c.when() + ": " + c.outcome())
                    .orElse("");
            item(match.rule().level().key() + ": " + match.rule().words().tellEn() + " (" + match.because() + ")"
                    + cleared);
        }
        visit.screening().notAsked().forEach(id -> item("not answered: " + id));
        visit.screening().openPoints().forEach(point -> item("open: " + point));
        if (visit.stopped()) {
            item(
                    LetterOfVisit.needed(visit)
                            ? "No plan: refer as it says above. The referral letter goes with the plan's files."
                            : "No plan: ask what is not answered first.");
        }
    }

    private void sites(List<SiteShare> sites) {
        heading("SUSPECTED PLACES");
        for (SiteShare site : sites) {
            item("%3.0f %%  %s%s"
                    .formatted(100 * site.probability(), site.site(), site.modelled() ? "" : "  (not modelled)"));
        }
        if (visit.file().sites().isEmpty()) {
            visit.sites().stream().findFirst().ifPresent(site -> item(site.reason()));
        } else {
            item("named by the therapist");
        }
    }

    private void tolerance(ToleranceReport tolerance) {
        heading("TOLERANCE (strain above rest, %; rest is " + describe(tolerance.restPosture()) + ")");
        for (SiteTolerance site : tolerance.perSite()) {
            item("%s: %.1f (%.1f to %.1f)".formatted(site.site(), site.medianPct(), site.lowPct(), site.highPct()));
        }
        tolerance
                .alpha()
                .ifPresent(alpha -> item("spread along the tract (0 at the site alone, 1 all along): before the tests "
                        + interval(alpha.prior(), 2) + ", after " + interval(alpha.posterior(), 2)));
        item("does it behave like nerve: " + tolerance.behavesLikeNerve().key());
        item("effective number of draws: %.0f".formatted(tolerance.effectiveDraws()));
        tolerance.reasons().forEach(this::reason);
    }

    private static String describe(String posture) {
        return posture.isEmpty() ? "all joints at 0" : posture;
    }

    private void unload() {
        if (visit.unload().isEmpty()) {
            return;
        }
        heading("FIRST: WHAT TO CHANGE IN THE DAY");
        for (Advice advice : visit.unload()) {
            item(advice.title().in(Language.EN));
        }
    }

    private void exercises(Irritability level, List<PlannedExercise> exercises, List<Reason> notes) {
        heading("EXERCISES, in the order in which they are tried in the room");
        startRule(level, exercises);
        item("Chances count every suspected place with its weight, and the tolerance of each.");
        if (exercises.isEmpty()) {
            item("none");
        }
        for (PlannedExercise exercise : exercises) {
            exercise(exercise);
        }
        notes.forEach(this::reason);
    }

    /** The rule that the doses follow; left out where a caution made them start lower than the irritability says. */
    private void startRule(Irritability level, List<PlannedExercise> exercises) {
        StartRule rule = StartRule.of(level);
        if (exercises.stream().allMatch(e -> e.dose().repetitions() == rule.repetitionsLow())) {
            item(
                    "Start at %s irritability: limit %.2f of the tolerance; until the next visit up to %d repetitions and %d times a day, begun at the low end [common practice]."
                            .formatted(level.key(), rule.fraction(), rule.repetitionsHigh(), rule.sessionsHigh()));
        }
    }

    private void exercise(PlannedExercise exercise) {
        line("");
        line("  " + visit.exercise(exercise.id()).name().in(Language.EN) + "  [" + exercise.id() + ", "
                + exercise.position() + "]");
        for (JointRange range : exercise.ranges()) {
            boolean held = range.fromDeg() == range.toDeg();
            item(
                    held
                            ? "%s held at %.0f deg".formatted(range.joint(), range.toDeg())
                            : "%s from %.0f to %.0f deg".formatted(range.joint(), range.fromDeg(), range.toDeg()));
        }
        var dose = exercise.dose();
        item("%d repetitions, %d %s, %s a day, %.0f s each way, no hold"
                .formatted(
                        dose.repetitions(),
                        dose.sets(),
                        dose.sets() == 1 ? "set" : "sets",
                        dose.sessionsPerDay() == 1 ? "once" : dose.sessionsPerDay() + " times",
                        dose.secondsPerDirection()));
        var effect = exercise.effect();
        item(
                effect.movementShown()
                        ? "glide at the %s %s mm%s, %.1f mm per %% of load"
                                .formatted(
                                        exercise.site(),
                                        interval(effect.glideMm(), 1),
                                        effect.directionUnsure() ? ", which way is not known" : "",
                                        effect.glideToLoad())
                        : "no movement shown at the %s: chosen for comfort".formatted(exercise.site()));
        item(
                "highest load %s %%, limit about %.1f %% (each draw has its own); chance of being above the limit %.0f %%: expected below where symptoms began"
                        .formatted(
                                interval(effect.peakLoadPct(), 1),
                                effect.limitPct(),
                                100 * effect.probabilityAboveLimit()));
        exercise.guards().forEach(this::reason);
        exercise.reasons().forEach(this::reason);
    }

    private void companions() {
        if (visit.companions().isEmpty()) {
            return;
        }
        heading("COMPANIONS, dosed by their own rules");
        for (Companion companion : visit.companions()) {
            Exercise exercise = companion.exercise();
            item("%s  [%s]: %s".formatted(exercise.name().in(Language.EN), exercise.id(), companion.because()));
            item("%s; not with: %s [%s]"
                    .formatted(
                            dose(exercise.dose()),
                            notFor(exercise),
                            exercise.dose().basis()));
        }
    }

    private static String dose(Dose dose) {
        String amount = dose.minutes().isPresent()
                ? dose.minutes().getAsInt() + " minutes"
                : "%d repetitions, %d sets".formatted(dose.repetitions(), dose.sets());
        return "%s, %d a day, %d days a week".formatted(amount, dose.sessionsPerDay(), dose.daysPerWeek());
    }

    private static String notFor(Exercise exercise) {
        List<String> words =
                exercise.use().notFor().stream().map(Exclusion::words).sorted().toList();
        return words.isEmpty() ? "nothing named" : String.join(", ", words);
    }

    /** One line for each reason with all the exercises that it holds for. */
    private void byReason(String title, List<Refusal> refused) {
        var ids = new LinkedHashMap<String, List<String>>();
        refused.forEach(refusal -> ids.computeIfAbsent(refusal.reason().text(), text -> new ArrayList<>())
                .add(refusal.id()));
        if (!ids.isEmpty()) {
            heading(title);
            ids.forEach((text, those) -> item(String.join(", ", those) + ": " + text));
        }
    }

    private void cautions() {
        heading("CAUTIONS");
        visit.cautions().forEach(this::item);
    }

    private void model() {
        heading("BASIS");
        item("program %s, %d draws, seed %d"
                .formatted(
                        visit.stamp().version(),
                        visit.stamp().draws(),
                        visit.stamp().seed()));
        item("parameters " + visit.stamp().parametersSha256().substring(0, 12) + ", evidence "
                + visit.stamp().evidenceSha256().substring(0, 12));
    }

    private void reasons(String title, List<Reason> reasons) {
        heading(title);
        reasons.forEach(this::reason);
    }

    private void reason(Reason reason) {
        String basis = reason.mark().equals("finding") ? "" : " [" + reason.mark() + ": " + reason.source() + "]";
        item(reason.text() + basis);
    }

    private void heading(String text) {
        line("");
        line(text);
    }

    private void item(String text) {
        String indent = "  - ";
        int column = 0;
        for (String word : text.split("\\s+", -1)) {
            if (column == 0) {
                out.append(indent);
                column = indent.length();
            } else if (column + 1 + word.length() > WIDTH) {
                out.append("\n    ");
                column = indent.length();
            } else {
                out.append(' ');
                column++;
            }
            out.append(word);
            column += word.length();
        }
        out.append('\n');
    }

    private void line(String text) {
        out.append(text).append('\n');
    }

    private static String interval(Interval interval, int digits) {
        String number = "%." + digits + "f";
        return String.format(
                Locale.ROOT,
                number + " (" + number + " to " + number + ")",
                interval.median(),
                interval.low(),
                interval.high());
    }
}
